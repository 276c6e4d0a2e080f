// SPDX-License-Identifier: MIT
#include <algorithm>
#include <boost/uuid/name_generator_sha1.hpp>
#include <boost/uuid/uuid_io.hpp>
#include <cstdint>
#include <iterator>
#include <map>

#include "card/sheets/timeline_text.hpp"
#include "platewright/card/calendar.hpp"
#include "platewright/card/kitchen_notices.hpp"
#include "platewright/event/event.hpp"
#include "platewright/problem/catalogue/clock.hpp"

namespace platewright {
namespace {

constexpr std::chrono::minutes before_a_step{-15};
constexpr std::chrono::minutes on_a_day{9 * 60};
constexpr std::chrono::minutes before_the_hour{-60};

/// A UUID by name (RFC 4122, version 5), of the event's inside the name space for web addresses.
boost::uuids::uuid uuid_of(const boost::uuids::uuid& space, const std::string& name) {
  return boost::uuids::name_generator_sha1(space)(name);
}

std::chrono::minutes minutes_up(const Duration& time) {
  return std::chrono::minutes(static_cast<std::int64_t>(ceiling_of(time.in(units::minute))));
}

std::string clock_in(const ZoneRules& zone, const Instant& time) {
  const LocalTime local = zone.local(time);
  return weekday_text(local) + " " + date_text(local) + " " + clock_text(local) + " " +
         zone.offset_at(time).abbreviation;
}

std::string when_text(const TimelineEntry& entry, const ZoneRules& zone) {
  if (is_a_day(entry)) return {};
  std::string out = "Latest " + clock_in(zone, entry.latest);
  if (entry.open) out += " or sooner";
  if (entry.earliest && *entry.earliest != entry.latest) {
    out += "\nSoonest " + clock_in(zone, *entry.earliest);
  }
  const bool by_the_oven =
      entry.kind == TimelineKind::oven_step || entry.kind == TimelineKind::pull;
  return by_the_oven ? out + "\nAn estimate: cook to temperature; local codes come first." : out;
}

std::string boxes_text(const std::vector<Box>& boxes) {
  std::string out;
  for (const Box& box : boxes) {
    out += "\n" + box.title;
    for (const std::string& line : box.lines) out += "\n" + line;
  }
  return out;
}

/// With the way out of the oven what is to be known of the dish, with the serving all there is.
std::string warnings_text(const TimelineEntry& entry, const std::vector<DishNotice>& notices,
                          const std::vector<Box>& warnings) {
  if (entry.kind == TimelineKind::serve) return boxes_text(warnings);
  if (entry.kind != TimelineKind::pull) return {};
  std::vector<DishNotice> of_dish;
  std::copy_if(notices.begin(), notices.end(), std::back_inserter(of_dish),
               [&](const DishNotice& notice) { return notice.dish == entry.recipe; });
  return boxes_text(kitchen_notices(of_dish));
}

CalendarEntry calendar_entry(const TimelineEntry& entry, const ZoneRules& zone) {
  CalendarEntry out;
  out.summary = (entry.recipe.empty() ? "" : entry.recipe + ": ") + begin_text(entry);
  out.description = when_text(entry, zone);
  out.begins = begin_of(entry);
  out.alarm = before_a_step;
  if (is_a_day(entry)) {
    out.day = std::chrono::floor<std::chrono::days>(zone.local(entry.latest));
    out.alarm = on_a_day;
    if (entry.until) {
      out.summary += ", by " + clock_text(LocalTime(*entry.until));
      out.alarm = std::min(on_a_day, *entry.until + before_the_hour);
    }
  }
  if (entry.takes) out.lasts = minutes_up(entry.takes->least);
  if (entry.oven && entry.oven->time) out.lasts = minutes_up(*entry.oven->time);
  return out;
}

}  // namespace

Calendar timeline_calendar(const Event& event, const Timeline& timeline,
                           const std::vector<DishNotice>& notices,
                           const std::vector<Box>& warnings) {
  if (!timeline.zone.named()) {
    throw Failure(at(problems::time_zone_missing("a calendar of an event that names no time zone"),
                     event.place));
  }
  const std::string day = date_text(timeline.zone.local(timeline.served));
  const auto of_event = uuid_of(boost::uuids::ns::url(), "platewright:" + event.name + "\n" + day);
  Calendar out{event.name, timeline.served, {}};
  std::map<std::string, int> seen;
  for (const TimelineEntry& entry : timeline.entries) {
    const std::string identity = kind_text(entry.kind) + "\n" + entry.recipe + "\n" +
                                 entry.supplier + "\n" + (is_a_day(entry) ? "" : begin_text(entry));
    out.entries.push_back(calendar_entry(entry, timeline.zone));
    out.entries.back().description += warnings_text(entry, notices, warnings);
    const int count = ++seen[identity];
    out.entries.back().uid = to_string(uuid_of(of_event, identity + "\n" + std::to_string(count)));
    out.stamp = std::min(out.stamp, begin_of(entry));
  }
  out.stamp = std::chrono::floor<std::chrono::days>(out.stamp);
  return out;
}

}  // namespace platewright
