// SPDX-License-Identifier: MIT
#include "platewright/card/timeline_sheet.hpp"

#include <algorithm>

#include "card/sheets/kept_food.hpp"
#include "card/sheets/shared.hpp"
#include "card/sheets/timeline_text.hpp"

namespace platewright {
namespace {

std::string day_moment(const LocalTime& time) {
  return weekday_text(time) + " " + date_text(time).substr(5);
}

/// `Mon 10-04`; with the hour until which an order is taken, `Mon 10-04 14:00`.
std::string whole_day(const TimelineEntry& entry, const LocalTime& begins) {
  const std::string day = day_moment(begins);
  return entry.until ? day + " " + clock_text(LocalTime(*entry.until)) : day;
}

/// The same as in ISO 8601, by the clock of the place.
std::string latest_data(const TimelineEntry& entry, const LocalTime& begins) {
  const std::string day = date_text(begins);
  return entry.until ? day + "T" + clock_text(LocalTime(*entry.until)) : day;
}

/// The clocks that are turned while something is being done.
std::vector<ZoneOffset> clocks_turned(const Timeline& timeline) {
  Instant first = timeline.served;
  for (const TimelineEntry& entry : timeline.entries) {
    if (is_a_day(entry)) continue;
    first = std::min({first, entry.latest, entry.earliest.value_or(first)});
  }
  return timeline.zone.changes(first, timeline.served);
}

/// Where a clock is turned, an hour may come twice: then each says which clock it is of.
std::string moment(const Instant& time, const Timeline& timeline) {
  const LocalTime local = timeline.zone.local(time);
  const bool turned = !clocks_turned(timeline).empty();
  return day_moment(local) + " " + clock_text(local) +
         (turned ? " " + timeline.zone.offset_at(time).abbreviation : "");
}

/// `On Sun 03-14 at 02:00 CST the clock goes to 03:00 CDT.`
std::string turning_text(const ZoneOffset& turned, const ZoneRules& zone) {
  const ZoneOffset before = zone.offset_at(turned.from - std::chrono::minutes(1));
  const LocalTime old((turned.from + before.offset).time_since_epoch());
  return "On " + day_moment(old) + " at " + clock_text(old) + " " + before.abbreviation +
         " the clock goes to " + clock_text(zone.local(turned.from)) + " " + turned.abbreviation +
         ". What takes a while is counted as it passes, not by the clock.";
}

bool is_planned(const Timeline& timeline) {
  return std::any_of(timeline.entries.begin(), timeline.entries.end(),
                     [](const TimelineEntry& entry) { return entry.planned.has_value(); });
}

std::vector<std::string> notes_on_time(const Timeline& timeline) {
  std::vector<std::string> out;
  for (const ZoneOffset& turned : clocks_turned(timeline)) {
    out.push_back(turning_text(turned, timeline.zone));
  }
  if (!timeline.zone.named()) {
    out.emplace_back(
        "The event names no time zone: times are counted as if no clock were turned in between.");
  }
  return out;
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
  const bool planned = is_planned(timeline);
  Table table{"clock",
              "",
              {words_column("earliest", "From"), words_column("latest", "Latest"),
               words_column("recipe", "For"), words_column("what", "Begin"), data_column("kind"),
               data_column("earliest_at"), data_column("latest_at")},
              {},
              {},
              {}};
  if (planned) {
    table.columns.front().use = ColumnUse::data;
    table.columns.insert(table.columns.begin() + 1, words_column("planned", "By the plan"));
    table.columns.push_back(data_column("planned_at"));
  }
  for (const TimelineEntry& entry : timeline.entries) {
    const bool span = entry.earliest && *entry.earliest != entry.latest;
    const LocalTime local = timeline.zone.local(entry.latest);
    std::string latest = is_a_day(entry) ? whole_day(entry, local) : moment(entry.latest, timeline);
    if (entry.open) latest += " or sooner";
    Row row{words(span ? moment(*entry.earliest, timeline) : ""),
            words(latest),
            words(entry.recipe),
            words(begin_text(entry)),
            words(kind_text(entry.kind)),
            words(entry.earliest ? instant_text(*entry.earliest, timeline.zone) : ""),
            words(is_a_day(entry) ? latest_data(entry, local)
                                  : instant_text(entry.latest, timeline.zone))};
    if (planned) {
      const auto& at = entry.planned;
      row.insert(row.begin() + 1, words(at ? moment(*at, timeline) : ""));
      row.push_back(words(at ? instant_text(*at, timeline.zone) : ""));
    }
    table.add(std::move(row));
  }
  table.notes = {
      "Times of roasting are estimates: cook to temperature. Keep raw meat at 41 \u00B0F "
      "(5 \u00B0C) or below until it goes into the oven, and hot food at 135 \u00B0F (57 "
      "\u00B0C) or above (FDA Food Code 2022, 3-501.16); local codes come first."};
  for (std::string& note : notes_on_time(timeline)) table.notes.push_back(std::move(note));
  sheet.add(std::move(table));
  if (!timeline.kept.empty()) sheet.add(kept_table(timeline.kept));
  if (!timeline.standing.empty()) sheet.add(standing_box(timeline.standing));
  if (!timeline.waiting.empty()) sheet.add(waiting_box(timeline.waiting));
  return sheet;
}

}  // namespace platewright
