// SPDX-License-Identifier: MIT
#include "platewright/card/roast_sheet.hpp"

#include <algorithm>

#include "card/sheets/lethality_parts.hpp"
#include "platewright/card/figures.hpp"
#include "platewright/safety/pull_temperature.hpp"
#include "platewright/safety/roast_oven.hpp"

namespace platewright {
namespace {

Cell minutes_cell(const Duration& time, Rounding rounding) {
  return duration_cell(round_to(time.in(units::minute), Rational(1), rounding), rounding);
}

/// Whole degrees: the model knows no more.
Cell degrees_cell(const Temperature& temperature, Rounding rounding) {
  return fahrenheit_cell(
      Temperature::fahrenheit(round_to(temperature.in_fahrenheit(), Rational(1), rounding)),
      rounding);
}

std::string shape_text(const RoastShape& shape) {
  const std::string across = as_short_decimal(shape.across().in(units::inch), 1) + " in (" +
                             as_short_decimal(shape.across().in(units::centimetre), 0) + " cm)";
  switch (shape.kind()) {
    case RoastShape::Kind::cylinder:
      return "girth " + across;
    case RoastShape::Kind::slab:
      return "thickness " + across;
    case RoastShape::Kind::sphere:
      break;
  }
  return "as thick as a ball of its weight";
}

std::string oven_text(const RoastTerms& terms) {
  std::string out = terms.oven_kind == OvenKind::fan ? "Fan oven" : "Still oven";
  for (std::size_t i = 0; i < terms.oven.size(); ++i) {
    out += (i == 0 ? " at " : ", then ") + fahrenheit_text(terms.oven[i].at, Rounding::half_up);
    if (terms.oven[i].time)
      out += " for " + duration_text(terms.oven[i].time->in(units::minute), Rounding::half_up);
  }
  return out + ", out at " + fahrenheit_text(terms.pull, Rounding::up) + " inside";
}

Table band_table(const RoastTerms& terms, const RoastBand& band) {
  Table table{"band",
              "",
              {words_column("figure", ""), figures_column("least", "Least"),
               figures_column("likely", "Likely"), figures_column("most", "Most")},
              {},
              {},
              {}};
  const auto times = [&](const char* name, const Band<Duration>& figures) {
    table.add({words(name), minutes_cell(figures.least, Rounding::down),
               minutes_cell(figures.likely, Rounding::half_up),
               minutes_cell(figures.most, Rounding::up)});
  };
  times("IN THE OVEN", band.in_oven);
  table.add({words("Highest inside, in the rest"), degrees_cell(band.highest.least, Rounding::down),
             degrees_cell(band.highest.likely, Rounding::half_up),
             degrees_cell(band.highest.most, Rounding::up)});
  times("Reached after the oven in", band.highest_after);
  table.notes = {
      "The rest is " + duration_text(terms.rest.in(units::minute), Rounding::up) + " at " +
          fahrenheit_text(terms.room, Rounding::half_up) + ".",
      band.calibrated
          ? "Fitted to your own timed roast; two roasts of one kind still differ by a tenth."
          : "From published figures of meat and ovens: time one roast of your own to narrow it."};
  return table;
}

/// The reading of a curve at a time or the last before it; nothing once it is over.
Cell core_at(const CoreCurve& curve, const Duration& time) {
  const auto& readings = curve.readings();
  if (readings.back().at < time) return {};
  const auto after = std::upper_bound(
      readings.begin(), readings.end(), time,
      [](const Duration& at, const CoreReading& reading) { return at < reading.at; });
  return degrees_cell(std::prev(after)->core, Rounding::down);
}

Table curve_table(const RoastBand& band) {
  Table table{"curve",
              "The core",
              {figures_column("after", "After"), figures_column("fast", "Fast"),
               figures_column("likely", "Likely"), figures_column("slow", "Slow")},
              {},
              {},
              {"Each until the end of its rest; degrees are rounded down."}};
  const Duration end = band.courses.most.curve.readings().back().at;
  const Duration step = Duration::of(end > Duration::of(4, units::hour) ? 30 : 15, units::minute);
  for (Duration time; time <= end; time += step) {
    table.add({minutes_cell(time, Rounding::half_up), core_at(band.courses.least.curve, time),
               core_at(band.courses.likely.curve, time), core_at(band.courses.most.curve, time)});
  }
  return table;
}

/// What each authority asks, and for a whole roast what the planned curves hold.
Box safety_box(Sheet& sheet, const RoastTerms& terms, const RoastBand& band, const FoodKind& kind,
               const SafetyTable& table) {
  Box box{"temperature", "TEMPERATURE: " + kind.key(), {}};
  const PullCheck check = check_pull_temperature(kind, terms.pull, terms.rest, table);
  for (const MinimumCheck& minimum : check.checks) {
    cite(sheet, minimum.minimum.source);
    box.lines.push_back(minimum.minimum.authority + " (" +
                        std::string(name_of(minimum.minimum.audience)) +
                        "): " + fahrenheit_text(minimum.minimum.at, Rounding::up) +
                        (minimum.reached ? ": reached in the oven" : ": NOT reached in the oven"));
  }
  if (check.advisory == Advisory::cook_on) {
    box.lines.emplace_back("BELOW THE MINIMUM: no notice to guests makes this food safe. Cook on.");
  }
  if (table.undercooked(kind) == Undercooked::held_or_advised) {
    const LethalityStandard standard = roast_standard(table);
    const auto line = [&](const char* name, const RoastCourse& course) {
      box.lines.push_back(std::string(name) + " as planned, " + standard.row + ": " +
                          card::verdict_text(check_lethality(course.curve, standard)));
    };
    line("Fast", band.courses.least);
    line("Likely", band.courses.likely);
    line("Slow", band.courses.most);
    box.lines.emplace_back("A plan is no proof: log the core, and check the log.");
  }
  return box;
}

Table published_table(Sheet& sheet, const std::vector<PublishedTime>& published) {
  Table table{"published",
              "Published beside it",
              {words_column("of", "Of"), words_column("weight", "Weight"), words_column("at", "At"),
               words_column("time", "Time"), words_column("end", "To")},
              {},
              {},
              {}};
  for (const PublishedTime& time : published) {
    table.add({words(time.of), words(time.weight), words(time.at),
               cited(sheet, words(time.time), time.source), words(time.end)});
  }
  return table;
}

}  // namespace

Sheet roast_sheet(const RoastQuestion& question, const RoastBand& band, const FoodKind& kind,
                  const Tables& tables, const std::vector<PublishedTime>& published,
                  const KitchenView& view) {
  const RoastTerms& terms = question.terms();
  Sheet sheet(SheetKind::roast);
  sheet.title = "Roast of " + view.weight(terms.shape.weight(), Rounding::half_up).text + ", " +
                shape_text(terms.shape);
  sheet.subtitles = {oven_text(terms),
                     "From " + fahrenheit_text(terms.start, Rounding::half_up) + " all through"};
  sheet.add(band_table(terms, band));
  sheet.add(safety_box(sheet, terms, band, kind, tables.safety));
  sheet.add(curve_table(band));
  if (!published.empty()) sheet.add(published_table(sheet, published));
  sheet.add(Box{"cautions",
                "CAUTIONS",
                {"THE THERMOMETER DECIDES, not this sheet: begin to measure before the least time, "
                 "in the thickest part, away from bone.",
                 "Bone, a hollow bird, stuffing, a crowded oven and an opened door are not in the "
                 "model.",
                 "Local codes and your inspector come first."}});
  return sheet;
}

}  // namespace platewright
