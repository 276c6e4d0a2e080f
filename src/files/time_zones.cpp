// SPDX-License-Identifier: MIT
#include "platewright/files/time_zones.hpp"

#include <date/tz.h>

#include <algorithm>
#include <array>
#include <stdexcept>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/clock.hpp"

namespace platewright {
namespace {

/// From here on every offset is of whole minutes; Liberia's was not until 1972.
constexpr std::chrono::sys_days first_day{std::chrono::year(2000) / 1 / 1};
/// No database reaches further; rules are read until there.
constexpr std::chrono::sys_days last_day{std::chrono::year(2400) / 1 / 1};

const date::tzdb& database() {
  try {
    const date::tzdb& zones = date::get_tzdb();
    if (zones.zones.empty()) throw std::runtime_error("the folder is empty");
    return zones;
  } catch (const std::exception& error) {
    throw Failure(problems::zone_database_missing(error.what()));
  }
}

const date::time_zone& zone_called(std::string_view name) {
  const date::tzdb& zones = database();
  std::vector<std::string> known;
  for (const date::time_zone& zone : zones.zones) {
    if (zone.name() == name) return zone;
    known.push_back(zone.name());
  }
  throw Failure(problems::name_unknown("time zone", name, known,
                                       "write a name of the tz database, such as America/Chicago"));
}

ZoneOffset offset_from(const date::sys_info& info) {
  return {std::chrono::floor<std::chrono::minutes>(info.begin),
          std::chrono::floor<std::chrono::minutes>(info.offset), info.abbrev};
}

/// The database holds changes up to a year of its own; behind it, it would say that no clock is
/// ever turned again. Three places of different laws are asked, of which one at least will go on
/// turning its clocks for as long as the database reaches.
bool reaches(const std::chrono::local_days& day) {
  static constexpr std::array<std::string_view, 3> places{"America/New_York", "Europe/London",
                                                          "Australia/Sydney"};
  const std::chrono::sys_seconds instant(day.time_since_epoch());
  const auto& zones = database().zones;
  return std::any_of(zones.begin(), zones.end(), [&](const date::time_zone& zone) {
    return std::find(places.begin(), places.end(), zone.name()) != places.end() &&
           zone.get_info(instant).end < last_day;
  });
}

ZoneRules rules_from_database(std::string_view name, const std::chrono::local_days& day) {
  const date::time_zone& zone = zone_called(name);
  // A day more, since an event may go on into the next.
  if (!reaches(day + std::chrono::days(1))) {
    throw Failure(problems::zone_database_short(day_text(day)));
  }
  date::sys_info info = zone.get_info(std::chrono::sys_seconds(first_day));
  const ZoneOffset first = offset_from(info);
  std::vector<ZoneOffset> later;
  while (info.end < last_day) {
    info = zone.get_info(info.end);
    later.push_back(offset_from(info));
  }
  return {zone.name(), first, std::move(later)};
}

}  // namespace

ZoneRules read_time_zone(std::string_view name, const std::chrono::local_days& day) {
  try {
    return rules_from_database(name, day);
  } catch (const Failure&) {
    throw;
  } catch (const std::exception& error) {
    // A zone is read from the disk when it is first asked for.
    throw Failure(problems::zone_database_missing(error.what()));
  }
}

}  // namespace platewright
