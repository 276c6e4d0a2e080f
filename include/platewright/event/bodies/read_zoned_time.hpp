// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/read_zoned_time.hpp.

#include <algorithm>
#include <string>

#include "platewright/event/read_zoned_time.hpp"

namespace platewright {

namespace detail {

/// The text without the spaces around it.
PLATEWRIGHT_BODY std::string_view without_spaces_around(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

/// `am` or `pm`, as people write it at the end of a time: `PM`, `p.m.`, `6:30pm`; else nothing.
PLATEWRIGHT_BODY std::string half_of_day(std::string_view text) {
  std::string letters;
  for (const char c : text) {
    if (c != '.' && c != ' ') letters += static_cast<char>(c >= 'A' && c <= 'Z' ? c + 32 : c);
  }
  const std::string end = letters.size() < 2 ? "" : letters.substr(letters.size() - 2);
  const bool alone = letters.size() == 2 ||
                     (letters.size() > 2 && letters.end()[-3] >= '0' && letters.end()[-3] <= '9');
  return alone && (end == "am" || end == "pm") ? end : "";
}

/// Refuses `06:30 PM` and says what it is on a clock of 24 hours, where that can be told.
PLATEWRIGHT_BODY void refuse_half_day(std::string_view text) {
  // A zone may stand behind it.
  const std::string_view time = text.size() > 11 ? text.substr(11) : std::string_view{};
  for (std::size_t end = time.size(); end != std::string_view::npos && end > 0;
       end = time.rfind(' ', end - 1)) {
    const std::string_view part = time.substr(0, end);
    const std::string half = half_of_day(part);
    if (half.empty()) continue;
    const std::size_t colon = part.find(':');
    const bool digits = colon == 1 || colon == 2;
    const bool two = digits && part.size() > colon + 2 &&
                     part.find_first_not_of("0123456789", colon + 1) == colon + 3;
    int hour = -1;
    if (digits && part.find_first_not_of("0123456789") == colon) hour = digits_at(part, 0, colon);
    std::string right;
    if (two && hour >= 1 && hour <= 12) {
      right = two_digits(hour % 12 + (half == "pm" ? 12 : 0)) + std::string(part.substr(colon, 3));
    }
    throw Failure(problems::time_half_day(part, right));
  }
}

/// Takes `-05:00` from the front of a text, if it is there.
PLATEWRIGHT_BODY std::optional<std::chrono::minutes> taken_offset(std::string_view& text) {
  if (text.size() < 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':') return std::nullopt;
  const std::chrono::minutes size =
      std::chrono::hours(digits_at(text, 1, 2)) + std::chrono::minutes(digits_at(text, 4, 2));
  const bool west = text[0] == '-';
  text = without_spaces_around(text.substr(6));
  return west ? -size : size;
}

}  // namespace detail

PLATEWRIGHT_BODY ZonedTime read_zoned_time(std::string_view text, const ZoneSource& zones) {
  text = detail::without_spaces_around(text);
  detail::refuse_half_day(text);
  const LocalTime local = read_local_time(text.substr(0, 16));
  std::string_view rest = text.substr(std::min<std::size_t>(16, text.size()));
  if (!rest.empty() && rest[0] != ' ' && rest[0] != '+' && rest[0] != '-') {
    throw Failure(problems::date_malformed(text, "another form"));
  }
  rest = detail::without_spaces_around(rest);
  if (rest.empty()) return local;
  const auto offset = detail::taken_offset(rest);
  if (rest.empty()) {
    throw Failure(problems::time_zone_missing("the offset " + offset_text(*offset) + " alone"));
  }
  return {local, zones(rest, std::chrono::floor<std::chrono::days>(local)), offset};
}

}  // namespace platewright
