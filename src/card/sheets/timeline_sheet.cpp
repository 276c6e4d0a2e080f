#include "platewright/card/timeline_sheet.hpp"

#include "card/sheets/shared.hpp"

namespace platewright {
namespace {

std::string moment(const LocalTime& time) {
  return weekday_text(time) + " " + date_text(time).substr(5) + " " + clock_text(time);
}

std::string what(const TimelineEntry& entry) {
  switch (entry.kind) {
    case TimelineKind::order:
      return "Last day to order from " + entry.supplier;
    case TimelineKind::method_step:
      return entry.text;
    case TimelineKind::oven_step: {
      std::string text = "Oven " + fahrenheit_text(entry.oven->oven);
      if (entry.oven->time) text += ", about " + duration_text(entry.oven->time->in(units::minute));
      if (entry.oven->until) text += ", until " + fahrenheit_text(*entry.oven->until) + " inside";
      return text;
    }
    case TimelineKind::pull:
      return entry.inside ? "Out of the oven at " + fahrenheit_text(*entry.inside) + " inside; rest"
                          : "Out of the oven";
    case TimelineKind::serve:
      return "SERVE";
  }
  return {};
}

}  // namespace

Sheet timeline_sheet(const Event& event, const Timeline& timeline) {
  Sheet sheet;
  sheet.kind = "timeline";
  sheet.title = "Timeline: " + event.name;
  if (const std::string served = card::served_text(event); !served.empty()) {
    sheet.subtitles.push_back(served);
  }
  Table table{"clock",
              "",
              {words_column("earliest", "From"), words_column("latest", "Latest"),
               words_column("recipe", "For"), words_column("what", "Begin")},
              {},
              {},
              {}};
  for (const TimelineEntry& entry : timeline.entries) {
    const bool span = entry.earliest && *entry.earliest != entry.latest;
    std::string latest = entry.kind == TimelineKind::order
                             ? weekday_text(entry.latest) + " " + date_text(entry.latest).substr(5)
                             : moment(entry.latest);
    if (entry.open) latest += " or sooner";
    table.add({words(span ? moment(*entry.earliest) : ""), words(latest), words(entry.recipe),
               words(what(entry))});
  }
  table.notes = {
      "Times of roasting are estimates: cook to temperature. Keep raw meat at 41 \u00B0F "
      "(5 \u00B0C) or below until it goes into the oven, and hot food at 135 \u00B0F (57 "
      "\u00B0C) or above (FDA Food Code 2022, 3-501.16); local codes come first."};
  sheet.add(std::move(table));
  return sheet;
}

}  // namespace platewright
