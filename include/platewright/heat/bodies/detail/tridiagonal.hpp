// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/detail/tridiagonal.hpp.

#include <utility>

#include "platewright/heat/detail/tridiagonal.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY std::vector<double> Tridiagonal::solved() && {
  for (std::size_t i = 1; i < right.size(); ++i) {
    const double factor = below[i] / diagonal[i - 1];
    diagonal[i] -= factor * above[i - 1];
    right[i] -= factor * right[i - 1];
  }
  right.back() /= diagonal.back();
  for (std::size_t i = right.size() - 1; i-- > 0;) {
    right[i] = (right[i] - above[i] * right[i + 1]) / diagonal[i];
  }
  return std::move(right);
}

}  // namespace platewright::detail
