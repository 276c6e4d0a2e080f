// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/number/apportion.hpp.

#include <algorithm>
#include <cstddef>

#include "platewright/number/apportion.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::vector<Rational> apportion(const std::vector<Rational>& lines,
                                                 const Rational& step) {
  Rational total;
  std::vector<Rational> rounded;
  Rational given;
  for (const Rational& line : lines) {
    total += line;
    rounded.push_back(down_to(line, step));
    given += rounded.back();
  }
  std::vector<std::size_t> order(lines.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t left, std::size_t right) {
    return lines[left] - rounded[left] > lines[right] - rounded[right];
  });
  Rational left_over = half_up(total, step) - given;
  for (std::size_t i = 0; i < order.size() && left_over > 0; ++i) {
    rounded[order[i]] += step;
    left_over -= step;
  }
  return rounded;
}

}  // namespace platewright
