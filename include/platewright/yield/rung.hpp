// SPDX-License-Identifier: MIT
#pragma once
// One step of a ladder: a weight at one stage becomes a weight at a later one.

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/yield/loss.hpp"
#include "platewright/yield/stage.hpp"

namespace platewright {

/// How far single samples of a yield lie apart, as far as the source prints it. All figures are
/// yields (out over in, no unit), not percentages.
struct Spread {
  std::optional<std::int64_t> samples;
  std::optional<Rational> standard_deviation;
  std::optional<Rational> low;
  std::optional<Rational> high;

  friend bool operator==(const Spread&, const Spread&) = default;
};

/// Whose number it is: a published table and its row, or the cook's own test.
struct Source {
  std::string text;
  std::string row;

  friend bool operator==(const Source&, const Source&) = default;
};

/// A yield between two stages: weight out over weight in, above 0. Dry goods that take up water
/// have a yield above 1.
struct Rung {
  Stage from = Stage::purchased;
  Stage to = Stage::served;
  Rational yield = 1;
  /// What the yield already accounts for; no later rung may take it off again.
  std::vector<Loss> holds;
  /// How it was cooked or cut, as in `roasted`.
  std::string method;
  Spread spread;
  Source source;
  /// True where the cook's own test stands in place of a table's figure.
  bool own = false;

  friend bool operator==(const Rung&, const Rung&) = default;
};

/// `purchased to cooked`.
inline std::string words_for(const Rung& rung) {
  return std::string(name_of(rung.from)) + " to " + std::string(name_of(rung.to));
}

/// Throws Failure for a yield of 0 or less.
inline void check_yield(const Rational& yield) {
  if (yield <= 0) throw Failure(problems::yield_not_positive(as_exact(yield)));
}

/// Whether the rung holds water that is taken up.
inline bool takes_up_water(const Rung& rung) {
  return std::find(rung.holds.begin(), rung.holds.end(), Loss::water_taken_up) != rung.holds.end();
}

/// Throws Failure for a yield above what can be: 100 % of what only loses, 1000 % of what takes up
/// water (no row of the built-in tables reaches half of it; common practice, no source).
void check_yield_at_most(const Rational& yield, bool takes_up_water);

/// Throws Failure for a standard deviation that does not come from two samples or more or is below
/// 0, and for a range whose ends are not above 0 or stand in the wrong order. The yield may lie
/// outside the range: published tables round the two differently.
void check_spread(const Spread& spread);

/// Throws Failure for what is wrong with a rung by itself: its yield, its spread, stages that do
/// not go down the ladder, and a loss named twice.
void check_rung(const Rung& rung);

/// Throws Failure for a meat that weighs more after a step than before it, unless the rung says
/// that water is taken up (brined, pumped or braised in its liquid).
void check_meat_yield(const Rung& rung);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/rung.hpp"
#endif
