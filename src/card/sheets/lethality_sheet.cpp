// SPDX-License-Identifier: MIT
#include "card/sheets/lethality_parts.hpp"
#include "platewright/card/figures.hpp"
#include "platewright/card/roast_sheet.hpp"

namespace platewright {
namespace card {
namespace {

/// What is missing of a hold, rounded up: a second too few is no hold.
Rational seconds_up(const Duration& time) {
  return round_to(time.in(units::second), Rational(1), Rounding::up);
}

/// What was held, rounded down.
Rational seconds_down(const Duration& time) {
  return round_to(time.in(units::second), Rational(1), Rounding::down);
}

/// `56 min`, `2 min 14 s`: seconds count here.
std::string hold_text(const Rational& seconds) {
  const Integer whole = numerator_of(seconds);
  if (whole == 0) return "an instant";
  const Integer rest = whole % 60;
  std::string out = whole >= 60 ? Integer(whole / 60).str() + " min" : "";
  if (rest != 0) out += (out.empty() ? "" : " ") + rest.str() + " s";
  return out;
}

Cell hold_cell(const Rational& seconds) {
  return figure_as(seconds == 0 ? "0 s" : hold_text(seconds), seconds, numerator_of(seconds).str(),
                   "s");
}

/// A step of the table prints its temperature without rounding.
Cell step_cell(const Temperature& at) {
  return figure_as(fahrenheit_text(at, Rounding::up), at.in_fahrenheit(),
                   as_short_decimal(at.in_fahrenheit(), 1), "F");
}

Table steps_table(const LethalityCheck& check, const std::string& key, const std::string& title) {
  Table table{key,
              title,
              {figures_column("at", "Step"), figures_column("hold", "Asked"),
               figures_column("held", "Held"), figures_column("missing", "Missing")},
              {},
              {},
              {}};
  for (const StepHeld& held : check.steps) {
    if (!held.reached) continue;
    table.add({step_cell(held.step.at), hold_cell(seconds_up(held.step.hold)),
               hold_cell(seconds_down(held.held)), hold_cell(seconds_up(held.missing()))});
  }
  if (table.groups.empty()) table.notes.emplace_back("No step of the table was reached.");
  return table;
}

}  // namespace

std::string standard_text(const LethalityStandard& standard) {
  std::string out = standard.food;
  if (!standard.reduction.empty()) out += ", " + standard.reduction;
  if (standard.fat) out += ", " + percent_text(*standard.fat) + " fat";
  return out;
}

std::string verdict_text(const LethalityCheck& check) {
  if (const auto met = check.met()) {
    return "MET: " + hold_text(seconds_up(met->step.hold)) + " at " +
           fahrenheit_text(met->step.at, Rounding::up) + " or more, by " +
           duration_text(met->met->in(units::minute), Rounding::up);
  }
  if (const auto nearest = check.nearest()) {
    return "NOT MET: " + hold_text(seconds_up(nearest->missing())) + " missing at " +
           fahrenheit_text(nearest->step.at, Rounding::up);
  }
  return "NOT MET: no step of the table was reached";
}

}  // namespace card

Sheet lethality_sheet(const std::string& name, const CoreCurve& curve,
                      const std::vector<LethalityStandard>& standards) {
  Sheet sheet(SheetKind::lethality);
  sheet.title = "Lethality: " + name;
  const auto& readings = curve.readings();
  sheet.subtitles.push_back(
      std::to_string(readings.size()) + " readings, " +
      duration_text((readings.back().at - readings.front().at).in(units::minute),
                    Rounding::half_up));
  Facts verdicts{"verdicts", "", {}, ColumnKind::words};
  std::size_t number = 0;
  std::vector<Table> tables;
  for (const LethalityStandard& standard : standards) {
    const LethalityCheck check = check_lethality(curve, standard);
    const std::string key = "table_" + std::to_string(++number);
    const std::string title = card::standard_text(standard);
    const std::string source =
        standard.authority + (standard.row.empty() ? "" : ", " + standard.row);
    verdicts.add(key, title, cited(sheet, words(card::verdict_text(check)), source));
    tables.push_back(card::steps_table(check, "steps_" + std::to_string(number), title));
  }
  sheet.add(std::move(verdicts));
  for (Table& table : tables) sheet.add(std::move(table));
  sheet.add(Box{
      "cautions",
      "CAUTIONS",
      {"Time between two readings counts at the lower of the two and for the steps at or below it; "
       "steps are not added up.",
       "The log is of one place: where the probe is not in the coldest, the rest is less cooked.",
       "The humidity, the time of heating up and the oven that these tables ask for are not "
       "checked here.",
       "Local codes, your plan of hazards and your inspector come first."}});
  return sheet;
}

}  // namespace platewright
