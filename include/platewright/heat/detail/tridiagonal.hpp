// SPDX-License-Identifier: MIT
#pragma once
// Linear equations each of which holds its own unknown and its two neighbours'.

#include <cstddef>
#include <utility>
#include <vector>

namespace platewright::detail {

/// Solved by elimination down and substitution up. The diagonal has to outweigh the rest of its
/// row, as conduction makes it.
struct Tridiagonal {
  explicit Tridiagonal(std::size_t size) : below(size), diagonal(size), above(size), right(size) {}

  std::vector<double> solved() && {
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

  std::vector<double> below;
  std::vector<double> diagonal;
  std::vector<double> above;
  std::vector<double> right;
};

}  // namespace platewright::detail
