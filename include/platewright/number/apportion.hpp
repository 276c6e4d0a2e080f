// SPDX-License-Identifier: MIT
#pragma once
// Rounded lines that add up to a rounded total.

#include <vector>

#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// Rounds every line to `step` so that the rounded lines sum to the rounded total exactly: the
/// total (half up) is shared out, each line at first rounded down, then the steps left over go to
/// the lines with the largest remainders, the earlier line first where two are equal
/// (largest-remainder method). A line moves by less than one step. `step` must be above 0.
std::vector<Rational> apportion(const std::vector<Rational>& lines, const Rational& step);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/number/bodies/apportion.hpp"
#endif
