// SPDX-License-Identifier: MIT
#pragma once
// The two-thirds power, by which surface follows weight.

#include "platewright/number/rational.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// `ratio`^(2/3): pieces of one shape have surfaces in this proportion when their weights are in
/// proportion `ratio` (a scaling law of geometry: length ~ weight^(1/3), surface ~ length^2). Exact
/// where the cube root is rational (1, 8, 27/64); else worked out by whole-number Newton steps to a
/// relative error below 10^-15 and kept as that fraction. `ratio` must be above 0.
Rational two_thirds_power(const Rational& ratio);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/power.hpp"
#endif
