// SPDX-License-Identifier: MIT
#include "platewright/event/zone_rules.hpp"

#include "platewright/event/zoned_time.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

using std::chrono::hours;
using std::chrono::minutes;

Instant utc(std::string_view text) {
  return Instant(read_local_time(text).time_since_epoch());
}

/// A place of our own whose clock goes forward at midnight and back at one.
ZoneRules at_midnight() {
  return {"Nowhere/Midnight",
          {utc("2027-01-01 00:00"), hours(2), "N"},
          {{utc("2027-09-30 22:00"), hours(2), "N"}, {utc("2027-03-31 22:00"), hours(3), "NS"}}};
}

}  // namespace

TEST_CASE("without a zone the clock is never turned") {
  const ZonedTime time(read_local_time("2027-03-14 02:30"));
  CHECK_FALSE(time.zone().named());
  CHECK(instant_text(time.instant(), time.zone()) == "2027-03-14T02:30");
  CHECK(time.zone().changes(utc("2000-01-01 00:00"), utc("2100-01-01 00:00")).empty());
}

TEST_CASE("a clock is read from instants and instants from a clock") {
  const ZoneRules zone = at_midnight();
  CHECK(instant_text(utc("2027-03-31 21:59"), zone) == "2027-03-31T23:59+02:00");
  CHECK(instant_text(utc("2027-03-31 22:00"), zone) == "2027-04-01T01:00+03:00");
  CHECK(zone.instants(read_local_time("2027-04-01 00:30")).empty());
  CHECK(zone.instants(read_local_time("2027-09-30 23:30")).size() == 1);
  CHECK(zone.instants(read_local_time("2027-10-01 00:30")) ==
        std::vector<Instant>{utc("2027-09-30 21:30"), utc("2027-09-30 22:30")});
  CHECK(zone.changes(utc("2027-03-31 22:00"), utc("2027-09-30 22:00")).size() == 1);
}

TEST_CASE("a day without a midnight begins later, one with two at the first") {
  const ZoneRules zone = at_midnight();
  const auto begins = [&](const char* day) {
    return instant_text(zone.day_begins(read_local_day(day)), zone);
  };
  CHECK(begins("2027-04-01") == "2027-04-01T01:00+03:00");
  CHECK(begins("2027-10-01") == "2027-10-01T00:00+03:00");
  CHECK(begins("2027-10-02") == "2027-10-02T00:00+02:00");
}

TEST_CASE("a zoned time is a time that there is") {
  const auto id = [](const char* local, std::optional<minutes> offset = std::nullopt) {
    return problem_of([&] { ZonedTime(read_local_time(local), at_midnight(), offset); }).id;
  };
  CHECK(id("2027-04-01 00:00") == "time-left-out");
  CHECK(id("2027-04-01 01:00").empty());
  CHECK(id("2027-10-01 00:59") == "time-twice");
  CHECK(id("2027-10-01 00:59", hours(3)).empty());
  CHECK(id("2027-10-01 00:59", hours(4)) == "time-offset-wrong");
}

TEST_CASE("offsets as ISO 8601 writes them") {
  CHECK(offset_text(minutes(0)) == "+00:00");
  CHECK(offset_text(minutes(-210)) == "-03:30");
  CHECK(offset_text(minutes(345)) == "+05:45");
}
