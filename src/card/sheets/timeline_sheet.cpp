#include "platewright/card/timeline_sheet.hpp"

#include "card/sheets/shared.hpp"

namespace platewright {
namespace {

std::string moment(const LocalTime& time) {
  return weekday_text(time) + " " + date_text(time).substr(5) + " " + clock_text(time);
}

/// ISO 8601 without a zone, which the sheet's heading has.
std::string data_moment(const LocalTime& time) {
  return date_text(time) + "T" + clock_text(time);
}

bool is_a_day(const TimelineEntry& entry) {
  return entry.kind == TimelineKind::order || entry.kind == TimelineKind::delivery;
}

/// The goods by name where they are few.
std::string delivery_text(const TimelineEntry& entry) {
  std::string out = entry.supplier.empty() ? "Goods in" : "Goods in from " + entry.supplier;
  if (entry.goods.size() > 3) return out + ": " + std::to_string(entry.goods.size()) + " kinds";
  for (std::size_t i = 0; i < entry.goods.size(); ++i)
    out += (i == 0 ? ": " : "; ") + entry.goods[i];
  return out;
}

std::string kind_data(TimelineKind kind) {
  switch (kind) {
    case TimelineKind::order:
      return "order";
    case TimelineKind::delivery:
      return "delivery";
    case TimelineKind::method_step:
      return "step";
    case TimelineKind::oven_step:
      return "oven";
    case TimelineKind::pull:
      return "pull";
    case TimelineKind::serve:
      return "serve";
  }
  return {};
}

std::string what(const TimelineEntry& entry) {
  switch (entry.kind) {
    case TimelineKind::order:
      return "Last day to order from " + entry.supplier;
    case TimelineKind::delivery:
      return delivery_text(entry);
    case TimelineKind::method_step:
      return entry.text;
    case TimelineKind::oven_step: {
      std::string text = "Oven " + fahrenheit_text(entry.oven->oven, Rounding::half_up);
      if (entry.oven->time)
        text += ", about " + duration_text(entry.oven->time->in(units::minute), Rounding::half_up);
      if (entry.oven->until)
        text += ", until " + fahrenheit_text(*entry.oven->until, Rounding::up) + " inside";
      return text;
    }
    case TimelineKind::pull:
      return entry.inside ? "Out of the oven at " + fahrenheit_text(*entry.inside, Rounding::up) +
                                " inside; rest"
                          : "Out of the oven";
    case TimelineKind::serve:
      return "SERVE";
  }
  return {};
}

Box standing_box(const std::vector<StandingFood>& standing) {
  Box box{"standing", "STANDS TOO LONG", {}};
  for (const StandingFood& food : standing) {
    box.lines.push_back(food.recipe + ": up to " +
                        duration_text(food.longest.in(units::minute), Rounding::up) +
                        " between the oven and the serving.");
  }
  const SafetyLimit& limit = standing.front().limit;
  box.lines.push_back("Between 41 \u00B0F (5 \u00B0C) and 135 \u00B0F (57 \u00B0C) food stands " +
                      duration_text(limit.within->in(units::minute), Rounding::down) +
                      " at most, by a written plan (" + limit.source + ", " + limit.row +
                      "). For longer keep it hot, or cool and reheat it; local codes come first.");
  return box;
}

}  // namespace

Sheet timeline_sheet(const Event& event, const Timeline& timeline) {
  Sheet sheet(SheetKind::timeline);
  sheet.title = "Timeline: " + event.name;
  if (const std::string served = card::served_text(event); !served.empty()) {
    sheet.subtitles.push_back(served);
  }
  Table table{"clock",
              "",
              {words_column("earliest", "From"), words_column("latest", "Latest"),
               words_column("recipe", "For"), words_column("what", "Begin"), data_column("kind"),
               data_column("earliest_at"), data_column("latest_at")},
              {},
              {},
              {}};
  for (const TimelineEntry& entry : timeline.entries) {
    const bool span = entry.earliest && *entry.earliest != entry.latest;
    std::string latest = is_a_day(entry)
                             ? weekday_text(entry.latest) + " " + date_text(entry.latest).substr(5)
                             : moment(entry.latest);
    if (entry.open) latest += " or sooner";
    table.add({words(span ? moment(*entry.earliest) : ""), words(latest), words(entry.recipe),
               words(what(entry)), words(kind_data(entry.kind)),
               words(entry.earliest ? data_moment(*entry.earliest) : ""),
               words(is_a_day(entry) ? date_text(entry.latest) : data_moment(entry.latest))});
  }
  table.notes = {
      "Times of roasting are estimates: cook to temperature. Keep raw meat at 41 \u00B0F "
      "(5 \u00B0C) or below until it goes into the oven, and hot food at 135 \u00B0F (57 "
      "\u00B0C) or above (FDA Food Code 2022, 3-501.16); local codes come first."};
  sheet.add(std::move(table));
  if (!timeline.standing.empty()) sheet.add(standing_box(timeline.standing));
  return sheet;
}

}  // namespace platewright
