// SPDX-License-Identifier: MIT
#pragma once
// The one root that yields need, for standard deviations.

#include "platewright/number/rational.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The square root of a value that is not below 0, rounded down to a fraction with a relative error
/// below 1e-20: sqrt(n / d) = sqrt(n x d x 10^40) / (d x 10^20), its upper root taken in whole
/// numbers. Exact for 0 and for squares of whole numbers.
Rational square_root(const Rational& value);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/number/bodies/square_root.hpp"
#endif
