// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/number/write.hpp.

#include <vector>

#include "platewright/number/write.hpp"

namespace platewright {

PLATEWRIGHT_BODY Rational power_of_ten(unsigned exponent) {
  Integer power = 1;
  for (unsigned i = 0; i < exponent; ++i) power *= 10;
  return Rational(power);
}

PLATEWRIGHT_BODY std::string as_fraction(const Rational& value) {
  std::string out = numerator_of(value).str();
  if (!is_whole(value)) out += "/" + denominator_of(value).str();
  return out;
}

PLATEWRIGHT_BODY std::string as_mixed(const Rational& value) {
  if (value < 0) return "-" + as_mixed(-value);
  const Integer whole = floor_of(value);
  const Rational rest = value - Rational(whole);
  if (rest == 0) return whole.str();
  if (whole == 0) return as_fraction(rest);
  return whole.str() + " " + as_fraction(rest);
}

PLATEWRIGHT_BODY bool has_finite_decimal(const Rational& value) {
  Integer bottom = denominator_of(value);
  while (bottom % 2 == 0) bottom /= 2;
  while (bottom % 5 == 0) bottom /= 5;
  return bottom == 1;
}

PLATEWRIGHT_BODY std::string as_decimal(const Rational& value, unsigned places, Rounding rounding) {
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

PLATEWRIGHT_BODY std::string as_short_decimal(const Rational& value, unsigned places,
                                              Rounding rounding) {
  std::string text = as_decimal(value, places, rounding);
  if (text.find('.') != std::string::npos) {
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
  }
  return text;
}

PLATEWRIGHT_BODY std::string as_exact(const Rational& value) {
  if (!has_finite_decimal(value)) return as_fraction(value);
  unsigned places = 0;
  Rational scaled = value;
  while (!is_whole(scaled)) {
    scaled *= 10;
    ++places;
  }
  return as_decimal(value, places);
}

PLATEWRIGHT_BODY std::string as_repeating_decimal(const Rational& value, std::size_t longest) {
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
