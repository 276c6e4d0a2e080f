// SPDX-License-Identifier: MIT
#pragma once
// Numbers as text: exact forms, and decimals rounded by name.

#include <cstddef>
#include <string>
#include <vector>

#include "platewright/number/round.hpp"

namespace platewright {

inline Rational power_of_ten(unsigned exponent) {
  Integer power = 1;
  for (unsigned i = 0; i < exponent; ++i) power *= 10;
  return Rational(power);
}

/// `7/3`, or `2` where the value is whole.
inline std::string as_fraction(const Rational& value) {
  std::string out = numerator_of(value).str();
  if (!is_whole(value)) out += "/" + denominator_of(value).str();
  return out;
}

/// `2 1/3`, `1/3`, `2`: a mixed number as cooks write it.
inline std::string as_mixed(const Rational& value) {
  if (value < 0) return "-" + as_mixed(-value);
  const Integer whole = floor_of(value);
  const Rational rest = value - Rational(whole);
  if (rest == 0) return whole.str();
  if (whole == 0) return as_fraction(rest);
  return whole.str() + " " + as_fraction(rest);
}

/// True where the value has a decimal that ends (its denominator holds only 2s and 5s).
inline bool has_finite_decimal(const Rational& value) {
  Integer bottom = denominator_of(value);
  while (bottom % 2 == 0) bottom /= 2;
  while (bottom % 5 == 0) bottom /= 5;
  return bottom == 1;
}

/// The value with `places` decimals, rounded by the rule named; half up if none is.
inline std::string as_decimal(const Rational& value, unsigned places,
                              Rounding rounding = Rounding::half_up) {
  const Rational step = Rational(1) / power_of_ten(places);
  Integer digits = steps_of(value, step, rounding);
  const bool negative = digits < 0;
  if (negative) digits = -digits;
  std::string text = digits.str();
  if (places > 0) {
    if (text.size() <= places) text.insert(0, places + 1 - text.size(), '0');
    text.insert(text.size() - places, ".");
  }
  return negative ? "-" + text : text;
}

/// As `as_decimal`, without zeros at the end: `1.5`, `2`.
inline std::string as_short_decimal(const Rational& value, unsigned places,
                                    Rounding rounding = Rounding::half_up) {
  std::string text = as_decimal(value, places, rounding);
  if (text.find('.') != std::string::npos) {
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
  }
  return text;
}

/// The exact value: a decimal where one ends, else a fraction. This is the form in JSON.
inline std::string as_exact(const Rational& value) {
  if (!has_finite_decimal(value)) return as_fraction(value);
  unsigned places = 0;
  Rational scaled = value;
  while (!is_whole(scaled)) {
    scaled *= 10;
    ++places;
  }
  return as_decimal(value, places);
}

/// The exact value as a decimal with its repeating part in brackets: `0.8(3)` is 5/6. Gives the
/// fraction instead where the repeating part is longer than `longest` digits.
inline std::string as_repeating_decimal(const Rational& value, std::size_t longest = 60) {
  if (has_finite_decimal(value)) return as_exact(value);
  if (value < 0) return "-" + as_repeating_decimal(-value, longest);
  const Integer bottom = denominator_of(value);
  const Integer whole = floor_of(value);
  Integer rest = numerator_of(value) - whole * bottom;
  std::vector<Integer> seen;
  std::string digits;
  while (digits.size() <= longest) {
    for (std::size_t i = 0; i < seen.size(); ++i) {
      if (seen[i] == rest) {
        return whole.str() + "." + digits.substr(0, i) + "(" + digits.substr(i) + ")";
      }
    }
    seen.push_back(rest);
    rest *= 10;
    const Integer digit = rest / bottom;
    digits += digit.str();
    rest -= digit * bottom;
  }
  return as_fraction(value);
}

}  // namespace platewright
