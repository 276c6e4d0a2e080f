// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/whole_count.hpp.

#include "platewright/day/whole_count.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::int64_t whole_count(const Rational& number) {
  if (number > most_counted) return most_counted;
  return static_cast<std::int64_t>(ceiling_of(number));
}

}  // namespace platewright
