// SPDX-License-Identifier: MIT
#pragma once
// Money at the steps that can be paid. Only prices, charges and sheets round.

#include "platewright/number/round.hpp"
#include "platewright/number/write.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright {

/// The smallest sum that can be paid in a currency: 0.01 in USD, 1 in JPY.
inline Money minor_unit(const Currency& currency) {
  return Money::of(Rational(1) / power_of_ten(currency.minor_digits()), units::currency_unit);
}

/// `sum` as a whole number of `step`s, by the rounding named. `step` must be above 0.
inline Money round_money(const Money& sum, const Money& step, Rounding rounding) {
  return step * Rational(steps_of(sum / step, 1, rounding));
}

}  // namespace platewright
