// SPDX-License-Identifier: MIT
#pragma once
// A day as it is printed.

#include <chrono>
#include <string>

namespace platewright {

inline std::string two_digits(long value) {
  const std::string text = std::to_string(value);
  return text.size() < 2 ? "0" + text : text;
}

/// `2027-10-09` (ISO 8601).
inline std::string day_text(const std::chrono::local_days& day) {
  const std::chrono::year_month_day date(day);
  return std::to_string(static_cast<int>(date.year())) + "-" +
         two_digits(static_cast<long>(static_cast<unsigned>(date.month()))) + "-" +
         two_digits(static_cast<long>(static_cast<unsigned>(date.day())));
}

}  // namespace platewright
