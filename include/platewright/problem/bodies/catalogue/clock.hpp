// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/clock.hpp.

#include <string>

#include "platewright/problem/catalogue/clock.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem time_left_out(std::string_view time, std::string_view zone,
                                       std::string_view from, std::string_view to) {
  return make_problem(
      "time-left-out",
      std::string(time) + " does not come in " + std::string(zone) + ": the clock goes from " +
          std::string(from) + " to " + std::string(to),
      "a time that the clock shows on that day",
      "write a time before " + std::string(from) + ", or from " + std::string(to) + " on");
}

PLATEWRIGHT_BODY Problem time_twice(std::string_view time, std::string_view zone,
                                    std::string_view first, std::string_view second) {
  const std::string begin = "`" + std::string(time) + " ";
  const std::string end = " " + std::string(zone) + "`";
  return make_problem(
      "time-twice",
      std::string(time) + " comes twice in " + std::string(zone) + ": the clock goes back",
      "which of the two it is",
      "write " + begin + std::string(first) + end + " for the first, " + begin +
          std::string(second) + end + " for the second");
}

PLATEWRIGHT_BODY Problem time_offset_wrong(std::string_view time, std::string_view zone,
                                           std::string_view written, std::string_view right) {
  return make_problem("time-offset-wrong",
                      "the offset " + std::string(written) + " at " + std::string(time),
                      std::string(right) + ", which " + std::string(zone) + " has then",
                      "correct the offset or the zone; the zone alone is enough");
}

PLATEWRIGHT_BODY Problem time_half_day(std::string_view text, std::string_view right) {
  return make_problem(
      "time-half-day", in_quotes(text) + " is of a clock of twelve hours",
      "a time of the 24-hour clock, as 18:30",
      right.empty() ? std::string("write the hours from 00 to 23") : "write " + std::string(right));
}

PLATEWRIGHT_BODY Problem time_zone_missing(std::string_view found) {
  return make_problem("time-zone-missing", std::string(found),
                      "the time zone of the place, which says when the clocks are turned",
                      "write its name in the tz database after the time, as in `at: 2027-10-09 "
                      "18:30 America/Chicago`");
}

PLATEWRIGHT_BODY Problem zone_database_missing(std::string_view why) {
  return make_problem("zone-database-missing",
                      "no time zones on this machine (" + std::string(why) + ")",
                      "the tz database in /usr/share/zoneinfo",
                      "install it (Debian calls it tzdata), or leave the zone out: times are then "
                      "counted as if no clock were turned");
}

PLATEWRIGHT_BODY Problem zone_database_short(std::string_view day) {
  return make_problem("zone-database-short",
                      "the tz database of this machine does not reach " + std::string(day),
                      "a day for which it says when the clocks are turned",
                      "correct the year, or install a newer or fuller database; or leave the zone "
                      "out: times are then counted as if no clock were turned");
}

}  // namespace platewright::problems
