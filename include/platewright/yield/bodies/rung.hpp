// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/rung.hpp.

#include "platewright/yield/rung.hpp"

namespace platewright {

PLATEWRIGHT_BODY void check_yield_at_most(const Rational& yield, bool takes_up_water) {
  const int most = takes_up_water ? 10 : 1;
  if (yield <= most) return;
  const bool missing_sign = yield >= 2 && yield <= 100;
  throw Failure(problems::yield_too_large(as_short_decimal(yield * 100, 2) + " %",
                                          std::to_string(most * 100) + " %", missing_sign));
}

PLATEWRIGHT_BODY void check_spread(const Spread& spread) {
  if (spread.standard_deviation) {
    const Rational& deviation = *spread.standard_deviation;
    if (deviation < 0) {
      throw Failure(problems::number_not_positive("a standard deviation", as_exact(deviation)));
    }
    if (spread.samples.value_or(0) < 2) {
      throw Failure(problems::spread_without_samples(as_exact(deviation)));
    }
  }
  const Rational low = spread.low.value_or(spread.high.value_or(1));
  const Rational high = spread.high.value_or(low);
  if (low <= 0 || high < low) {
    throw Failure(problems::spread_upside_down(as_exact(low), as_exact(high)));
  }
}

PLATEWRIGHT_BODY void check_rung(const Rung& rung) {
  check_yield(rung.yield);
  check_spread(rung.spread);
  if (rung.to <= rung.from) {
    throw Failure(problems::stages_out_of_order(name_of(rung.from), name_of(rung.to)));
  }
  for (auto loss = rung.holds.begin(); loss != rung.holds.end(); ++loss) {
    if (std::find(rung.holds.begin(), loss, *loss) != loss) {
      throw Failure(problems::loss_held_twice(name_of(*loss), words_for(rung), words_for(rung)));
    }
  }
}

PLATEWRIGHT_BODY void check_meat_yield(const Rung& rung) {
  if (rung.yield > 1 && !takes_up_water(rung)) {
    throw Failure(problems::meat_yield_above_one(as_exact(rung.yield)));
  }
}

}  // namespace platewright
