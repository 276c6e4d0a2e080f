// SPDX-License-Identifier: MIT
#pragma once
// Numbers as text: exact forms, and decimals rounded by name.

#include <cstddef>
#include <string>

#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

Rational power_of_ten(unsigned exponent);

/// `7/3`, or `2` where the value is whole.
std::string as_fraction(const Rational& value);

/// `2 1/3`, `1/3`, `2`: a mixed number as cooks write it.
std::string as_mixed(const Rational& value);

/// True where the value has a decimal that ends (its denominator holds only 2s and 5s).
bool has_finite_decimal(const Rational& value);

/// The value with `places` decimals, rounded by the rule named; half up if none is.
std::string as_decimal(const Rational& value, unsigned places,
                       Rounding rounding = Rounding::half_up);

/// As `as_decimal`, without zeros at the end: `1.5`, `2`.
std::string as_short_decimal(const Rational& value, unsigned places,
                             Rounding rounding = Rounding::half_up);

/// The exact value: a decimal where one ends, else a fraction. This is the form in JSON.
std::string as_exact(const Rational& value);

/// The exact value as a decimal with its repeating part in brackets: `0.8(3)` is 5/6. Gives the
/// fraction instead where the repeating part is longer than `longest` digits.
std::string as_repeating_decimal(const Rational& value, std::size_t longest = 60);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/number/bodies/write.hpp"
#endif
