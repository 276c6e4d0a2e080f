// SPDX-License-Identifier: MIT
#pragma once
// From exact fractions to floating-point numbers and back. Nothing crosses unless it is asked by
// name.

#include "platewright/number/rational.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

/// The `double` nearest to `value`: relative error at most 2^-53 (1.2e-16) for every size from
/// 1e-300 to 1e300. Beyond the range of `double` it is infinite, or 0.
double nearest_double(const Rational& value);

/// The fraction that a `double` is, to its last binary digit: 0.5 is 1/2, but 0.1 is
/// 3602879701896397/36028797018963968, as no `double` is a tenth. No error. Throws Failure for what
/// is not finite.
Rational exact_value(double number);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/number/bodies/nearest_double.hpp"
#endif
