// SPDX-License-Identifier: MIT
#pragma once
// The kitchen's clock for a calendar program.

#include <optional>
#include <string>
#include <vector>

#include "platewright/card/blocks.hpp"
#include "platewright/event/dish_notices.hpp"
#include "platewright/event/timeline.hpp"

namespace platewright {

/// One entry of a calendar, whichever program shows it.
struct CalendarEntry {
  std::string uid;  ///< a UUID (RFC 4122, version 5), the same whenever the entry is made
  std::string summary;
  std::string description;
  Instant begins;
  std::optional<std::chrono::local_days> day = std::nullopt;  ///< all of it, and no hour
  std::chrono::minutes lasts{0};
  std::chrono::minutes alarm{0};  ///< after the beginning; less than 0: before it
};

struct Calendar {
  std::string name;
  Instant stamp;
  std::vector<CalendarEntry> entries;
};

/// Each entry at the moment that the plan of the day names, else at the latest at which it may
/// begin; both bounds stand in its description. An alarm 15 min before, on days at 9 or, where that
/// is sooner, an hour before the hour of an order (common practice, no source). An entry is known
/// again by the event's name and day, and by its kind, recipe, text and supplier. The stamp is the
/// beginning of the first entry's day, so that one plan gives one file. Throws Failure for an event
/// without a time zone, since other clocks would show it at other moments. What has to be known of
/// a dish stands with its way out of the oven, `warnings`, the boxes of the timeline's sheet, with
/// the serving: who has the calendar alone misses none.
Calendar timeline_calendar(const Event& event, const Timeline& timeline,
                           const std::vector<DishNotice>& notices = {},
                           const std::vector<Box>& warnings = {});

/// As RFC 5545 (iCalendar) writes it, with a name by RFC 7986: times in UTC, CR LF, no line over 75
/// octets, none folded inside a character, line ends and what parts values escaped, an alarm for
/// each entry. Bytes that are not UTF-8 and control characters come out as escapes (`\xNN`).
std::string write_icalendar(const Calendar& calendar);

}  // namespace platewright
