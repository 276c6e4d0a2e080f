// SPDX-License-Identifier: MIT
#pragma once
// A date and time on the wall clock of the event's place.

#include <chrono>
#include <string>
#include <string_view>

#include "platewright/costing/day_text.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

/// A wall-clock minute of a place. What takes a while is counted in instants (`zone_rules.hpp`).
using LocalTime = std::chrono::local_time<std::chrono::minutes>;

namespace detail {

int digits_at(std::string_view text, std::size_t start, std::size_t count);

}  // namespace detail

/// Reads `2027-10-09` (ISO 8601). Throws Failure for another form and for days that do not exist.
std::chrono::local_days read_local_day(std::string_view text);

/// Reads `2027-10-09 18:30` (ISO 8601 with a space or a T). Throws Failure for another form and for
/// days and hours that do not exist.
LocalTime read_local_time(std::string_view text);

/// `2027-10-09`.
inline std::string date_text(const LocalTime& time) {
  return day_text(std::chrono::floor<std::chrono::days>(time));
}

/// `Sat`.
std::string weekday_text(const LocalTime& time);

/// `18:30`.
std::string clock_text(const LocalTime& time);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/local_time.hpp"
#endif
