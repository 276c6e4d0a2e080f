// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/local_time.hpp.

#include "platewright/event/local_time.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY int digits_at(std::string_view text, std::size_t start, std::size_t count) {
  int out = 0;
  for (std::size_t i = start; i < start + count; ++i) {
    if (i >= text.size() || text[i] < '0' || text[i] > '9') {
      throw Failure(problems::date_malformed(text, "digits are missing"));
    }
    out = out * 10 + (text[i] - '0');
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY std::chrono::local_days read_local_day(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
    throw Failure(problems::day_malformed(text, "another form"));
  }
  const std::chrono::year_month_day date{
      std::chrono::year(detail::digits_at(text, 0, 4)),
      std::chrono::month(static_cast<unsigned>(detail::digits_at(text, 5, 2))),
      std::chrono::day(static_cast<unsigned>(detail::digits_at(text, 8, 2)))};
  if (!date.ok()) throw Failure(problems::day_malformed(text, "no such day"));
  return std::chrono::local_days(date);
}

PLATEWRIGHT_BODY LocalTime read_local_time(std::string_view text) {
  if (text.size() != 16 || text[4] != '-' || text[7] != '-' ||
      (text[10] != ' ' && text[10] != 'T') || text[13] != ':') {
    throw Failure(problems::date_malformed(text, "another form"));
  }
  const std::chrono::year_month_day date{
      std::chrono::year(detail::digits_at(text, 0, 4)),
      std::chrono::month(static_cast<unsigned>(detail::digits_at(text, 5, 2))),
      std::chrono::day(static_cast<unsigned>(detail::digits_at(text, 8, 2)))};
  const int hour = detail::digits_at(text, 11, 2);
  const int minute = detail::digits_at(text, 14, 2);
  if (!date.ok() || hour > 23 || minute > 59) {
    throw Failure(problems::date_malformed(text, "no such day or time"));
  }
  return std::chrono::local_days(date) + std::chrono::hours(hour) + std::chrono::minutes(minute);
}

PLATEWRIGHT_BODY std::string weekday_text(const LocalTime& time) {
  static constexpr const char* names[] = {"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
  return names[std::chrono::weekday(std::chrono::floor<std::chrono::days>(time)).c_encoding()];
}

PLATEWRIGHT_BODY std::string clock_text(const LocalTime& time) {
  const auto minutes = (time - std::chrono::floor<std::chrono::days>(time)).count();
  return two_digits(minutes / 60) + ":" + two_digits(minutes % 60);
}

}  // namespace platewright
