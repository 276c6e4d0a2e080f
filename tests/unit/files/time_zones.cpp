// SPDX-License-Identifier: MIT
// Days of 2027 on which clocks are turned, by the tz database (release 2025b): United States second
// Sunday of March and first of November at 2:00, European Union last Sundays of March and October
// at 1:00 UTC, India none (+05:30), Lord Howe Island by half an hour.

#include "platewright/files/time_zones.hpp"

#include "platewright/event/read_zoned_time.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

ZonedTime read(std::string_view text) {
  return read_zoned_time(text, read_time_zone);
}

Problem zone_refused(std::string_view text) {
  return problem_of([&] { read(text); });
}

/// What the clock of `text`'s place shows so many hours before.
std::string hours_before(std::string_view text, int hours) {
  const ZonedTime time = read(text);
  return instant_text(time.instant() - std::chrono::hours(hours), time.zone());
}

}  // namespace

TEST_CASE("twelve hours are twelve hours where the clock goes forward") {
  CHECK(hours_before("2027-03-14 10:00 America/Chicago", 12) == "2027-03-13T21:00-06:00");
  CHECK(hours_before("2027-03-28 10:00 Europe/Berlin", 12) == "2027-03-27T21:00+01:00");
}

TEST_CASE("twelve hours are twelve hours where the clock goes back") {
  CHECK(hours_before("2027-11-07 10:00 America/Chicago", 12) == "2027-11-06T23:00-05:00");
  CHECK(hours_before("2027-10-31 10:00 Europe/Berlin", 12) == "2027-10-30T23:00+02:00");
}

TEST_CASE("zones of half hours") {
  CHECK(hours_before("2027-03-28 10:00 Asia/Kolkata", 12) == "2027-03-27T22:00+05:30");
  CHECK(hours_before("2027-04-04 10:00 Australia/Lord_Howe", 12) == "2027-04-03T22:30+11:00");
}

TEST_CASE("an hour that does not come") {
  const Problem us = zone_refused("2027-03-14 02:30 America/Chicago");
  CHECK(us.id == "time-left-out");
  CHECK(us.found ==
        "2027-03-14 02:30 does not come in America/Chicago: the clock goes from 02:00 to 03:00");
  CHECK(us.remedy == "write a time before 02:00, or from 03:00 on");
  CHECK(zone_refused("2027-03-28 02:00 Europe/Berlin").id == "time-left-out");
  CHECK(zone_refused("2027-03-28 02:59 Europe/Berlin").id == "time-left-out");
  CHECK_NOTHROW(read("2027-03-28 01:59 Europe/Berlin"));
  CHECK_NOTHROW(read("2027-03-28 03:00 Europe/Berlin"));
}

TEST_CASE("an hour that comes twice") {
  const Problem us = zone_refused("2027-11-07 01:30 America/Chicago");
  CHECK(us.id == "time-twice");
  CHECK(us.remedy ==
        "write `2027-11-07 01:30 -05:00 America/Chicago` for the first, "
        "`2027-11-07 01:30 -06:00 America/Chicago` for the second");
  CHECK(zone_refused("2027-10-31 02:30 Europe/Berlin").id == "time-twice");
  const ZonedTime first = read("2027-11-07 01:30 -05:00 America/Chicago");
  const ZonedTime second = read("2027-11-07T01:30-06:00 America/Chicago");
  CHECK(second.instant() - first.instant() == std::chrono::hours(1));
  CHECK(first.local() == second.local());
  CHECK(first < second);
}

TEST_CASE("an offset that the place does not have then") {
  CHECK(zone_refused("2027-07-01 12:00 -06:00 America/Chicago").id == "time-offset-wrong");
  CHECK(zone_refused("2027-07-01 12:00 -06:00 America/Chicago").expected ==
        "-05:00, which America/Chicago has then");
  CHECK(zone_refused("2027-07-01T12:00-05:00").id == "time-zone-missing");
}

TEST_CASE("a zone that is not there gets the nearest that are") {
  const Problem slip = zone_refused("2027-10-09 18:30 America/Chicgo");
  CHECK(slip.id == "name-unknown");
  CHECK(slip.remedy.find("\"America/Chicago\"") != std::string::npos);
  CHECK(zone_refused("2027-10-09 18:30 Chicago").remedy.find("\"America/Chicago\"") !=
        std::string::npos);
  CHECK(zone_refused("2027-10-09 18:30 Mill Lane").remedy ==
        "write a name of the tz database, such as America/Chicago");
}

TEST_CASE("a clock of twelve hours") {
  CHECK(zone_refused("2027-10-09 06:30 PM").remedy == "write 18:30");
  CHECK(zone_refused("2027-10-09 6:30pm America/Chicago").remedy == "write 18:30");
  CHECK(zone_refused("2027-10-09 12:05 a.m.").remedy == "write 00:05");
  CHECK(zone_refused("2027-10-09 12:05 p.m. America/Chicago").remedy == "write 12:05");
  CHECK(zone_refused("2027-10-09 6 PM").id == "time-half-day");
  CHECK(zone_refused("2027-10-09 18:30:00").id == "date-malformed");
}

TEST_CASE("a year that the database does not reach") {
  CHECK(zone_refused("2399-10-09 18:30 America/Chicago").id == "zone-database-short");
  CHECK_NOTHROW(read("2036-10-09 18:30 America/Chicago"));
}
