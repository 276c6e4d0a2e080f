// SPDX-License-Identifier: MIT
#pragma once
// Linear equations each of which holds its own unknown and its two neighbours'.

#include <cstddef>
#include <vector>

#include "platewright/problem/body.hpp"

namespace platewright::detail {

/// Solved by elimination down and substitution up. The diagonal has to outweigh the rest of its
/// row, as conduction makes it.
struct Tridiagonal {
  explicit Tridiagonal(std::size_t size) : below(size), diagonal(size), above(size), right(size) {}

  std::vector<double> solved() &&;

  std::vector<double> below;
  std::vector<double> diagonal;
  std::vector<double> above;
  std::vector<double> right;
};

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/detail/tridiagonal.hpp"
#endif
