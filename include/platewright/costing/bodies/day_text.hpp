// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/day_text.hpp.

#include "platewright/costing/day_text.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string two_digits(long value) {
  const std::string text = std::to_string(value);
  return text.size() < 2 ? "0" + text : text;
}

PLATEWRIGHT_BODY std::string day_text(const std::chrono::local_days& day) {
  const std::chrono::year_month_day date(day);
  return std::to_string(static_cast<int>(date.year())) + "-" +
         two_digits(static_cast<long>(static_cast<unsigned>(date.month()))) + "-" +
         two_digits(static_cast<long>(static_cast<unsigned>(date.day())));
}

}  // namespace platewright
