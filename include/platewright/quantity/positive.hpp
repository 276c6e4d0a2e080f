// SPDX-License-Identifier: MIT
#pragma once
// Figures that a yield calculation can't do without.

#include <string>
#include <string_view>

#include "platewright/number/write.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/money.hpp"
#include "platewright/quantity/weight_words.hpp"

namespace platewright {

inline std::string figure_words(const Rational& value) {
  return as_exact(value);
}
inline std::string figure_words(const Mass& value) {
  return weight_words(value);
}
inline std::string figure_words(const Money& value) {
  return as_exact(value.in(units::currency_unit));
}

/// Throws Failure for a figure of 0 or less.
template <class Figure>
void check_positive(std::string_view what, const Figure& value) {
  if (value <= Figure{}) throw Failure(problems::number_not_positive(what, figure_words(value)));
}

/// Throws Failure for a figure below 0.
template <class Figure>
void check_not_negative(std::string_view what, const Figure& value) {
  if (value < Figure{}) throw Failure(problems::number_not_positive(what, figure_words(value)));
}

}  // namespace platewright
