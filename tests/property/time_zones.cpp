// SPDX-License-Identifier: MIT
// What a clock shows and what it is stand for each other.

#include "platewright/files/time_zones.hpp"

#include <rapidcheck.h>

#include <algorithm>

#include "support/catch.hpp"

using namespace platewright;

namespace {

ZoneRules any_zone() {
  const auto name =
      *rc::gen::element<std::string>("America/Chicago", "Europe/London", "Asia/Kolkata",
                                     "Australia/Lord_Howe", "Asia/Kathmandu", "Africa/Casablanca");
  return read_time_zone(name, std::chrono::local_days(std::chrono::year(2027) / 6 / 1));
}

Instant any_instant() {
  const std::chrono::sys_days first(std::chrono::year(2026) / 1 / 1);
  return first + std::chrono::minutes(*rc::gen::inRange(0, 3 * 365 * 24 * 60));
}

}  // namespace

TEST_CASE("every instant is found again from the clock that shows it") {
  CHECK(rc::check([] {
    const ZoneRules zone = any_zone();
    const Instant instant = any_instant();
    const auto found = zone.instants(zone.local(instant));
    RC_ASSERT(found.size() == 1U || found.size() == 2U);
    RC_ASSERT(std::find(found.begin(), found.end(), instant) != found.end());
  }));
}

TEST_CASE("a clock runs as time does but where it is turned") {
  CHECK(rc::check([] {
    const ZoneRules zone = any_zone();
    const Instant begin = any_instant();
    const std::chrono::minutes span(*rc::gen::inRange(0, 400 * 24 * 60));
    std::chrono::minutes turned(0);
    for (const ZoneOffset& change : zone.changes(begin, begin + span)) {
      turned += change.offset - zone.offset_at(change.from - std::chrono::minutes(1)).offset;
    }
    RC_ASSERT(zone.local(begin + span) - zone.local(begin) == span + turned);
  }));
}
