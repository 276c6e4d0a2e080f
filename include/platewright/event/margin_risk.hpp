// SPDX-License-Identifier: MIT
#pragma once
// How likely it is that an event earns less than a floor, as prices and yields spread.
//
// Method: the price that the guests pay is fixed. Each ingredient's share of the food is drawn
// anew, many times: cost x (price factor) x (weight factor) / (yield factor), all normal around 1
// with the relative deviations given, drawn again where they come out at 0.05 or below. The draws
// are in floating point (relative error about 1e-15, far below the error of the estimate); the
// generator is the 64-bit Mersenne twister (Matsumoto and Nishimura 1998), the normal values come
// from it by the polar method (Marsaglia and Bray 1964), so that a seed gives the same figures
// wherever it runs.

#include <cstdint>
#include <vector>

#include "platewright/costing/make_quote.hpp"
#include "platewright/event/price_spread.hpp"
#include "platewright/number/nearest_double.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/what_if.hpp"

namespace platewright {

struct RiskQuestion {
  Rational floor;  ///< of the margin, as a share of what the guests pay
  std::uint64_t seed = 1;
  std::int64_t draws = 10000;
};

/// The share of the draws whose margin lies below the floor.
struct MarginRisk {
  RiskQuestion question;
  std::vector<UncertainCost> costs;
  Rational chance;  ///< below / draws, exactly
  std::int64_t below = 0;
  /// Of the estimate: sqrt(p (1 - p) / draws), to a relative error of 1e-12.
  Rational standard_error;
};

/// Throws Failure for a number of draws outside 100 to 1000000, for a floor of 100 % or more, and
/// for a spread so wide that its deviation is half of the average or more.
MarginRisk margin_risk(const Quote& quote, const std::vector<UncertainCost>& costs,
                       const RiskQuestion& question);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/margin_risk.hpp"
#endif
