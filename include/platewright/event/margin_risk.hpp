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

#include <cmath>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "platewright/costing/make_quote.hpp"
#include "platewright/event/price_spread.hpp"
#include "platewright/number/nearest_double.hpp"
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

namespace detail {

/// Numbers drawn for one answer: some seconds.
inline constexpr std::size_t most_drawn = 50'000'000;

/// Normal values around 0 with deviation 1.
class NormalDraws {
 public:
  explicit NormalDraws(std::uint64_t seed) : bits_(seed) {}

  double next() {
    if (has_kept_) {
      has_kept_ = false;
      return kept_;
    }
    double x = 0.0;
    double y = 0.0;
    double square = 0.0;
    do {
      x = 2.0 * uniform() - 1.0;
      y = 2.0 * uniform() - 1.0;
      square = x * x + y * y;
    } while (square >= 1.0 || square == 0.0);
    const double stretch = std::sqrt(-2.0 * std::log(square) / square);
    kept_ = y * stretch;
    has_kept_ = true;
    return x * stretch;
  }

  /// A factor around 1, above 0.05.
  double factor(double deviation) {
    if (deviation == 0.0) return 1.0;
    for (;;) {
      const double value = 1.0 + deviation * next();
      if (value > 0.05) return value;
    }
  }

 private:
  /// From 0 to below 1, in steps of 2^-53.
  double uniform() { return static_cast<double>(bits_() >> 11U) * 0x1.0p-53; }

  std::mt19937_64 bits_;
  bool has_kept_ = false;
  double kept_ = 0.0;
};

}  // namespace detail

/// Throws Failure for a number of draws outside 100 to 1000000, for a floor of 100 % or more, and
/// for a spread so wide that its deviation is half of the average or more.
inline MarginRisk margin_risk(const Quote& quote, const std::vector<UncertainCost>& costs,
                              const RiskQuestion& question) {
  if (question.draws < 100 || question.draws > 1000000) {
    throw Failure(problems::draws_out_of_range(std::to_string(question.draws)));
  }
  if (question.floor >= 1) {
    throw Failure(problems::share_out_of_range("a floor of the margin", as_exact(question.floor),
                                               "a share below 100 %"));
  }
  if (costs.size() * static_cast<std::size_t>(question.draws) > detail::most_drawn) {
    throw Failure(
        problems::too_many_draws(std::to_string(question.draws), std::to_string(costs.size())));
  }
  struct DrawnCost {
    double cost;
    double price;
    double yield;
    double weight;
  };
  std::vector<DrawnCost> parts;
  Money certain = quote.food;
  for (const UncertainCost& cost : costs) {
    if (cost.price_deviation * 2 >= 1 || cost.yield_deviation * 2 >= 1 ||
        cost.weight_deviation * 2 >= 1) {
      throw Failure(problems::spread_too_wide("the spread of " + in_quotes(cost.ingredient)));
    }
    certain -= cost.cost;
    parts.push_back({nearest_double(cost.cost.in(units::currency_unit)),
                     nearest_double(cost.price_deviation), nearest_double(cost.yield_deviation),
                     nearest_double(cost.weight_deviation)});
  }
  const double limit =
      nearest_double((cost_of_food(quote).food_for(quote.income * (1 - question.floor)) - certain)
                         .in(units::currency_unit));
  MarginRisk out;
  out.question = question;
  out.costs = costs;
  detail::NormalDraws draws(question.seed);
  for (std::int64_t i = 0; i < question.draws; ++i) {
    double food = 0.0;
    for (const DrawnCost& part : parts) {
      const double price = draws.factor(part.price) * draws.factor(part.weight);
      food += part.cost * price / draws.factor(part.yield);
    }
    if (food > limit) ++out.below;
  }
  out.chance = fraction(out.below, question.draws);
  out.standard_error = square_root(out.chance * (1 - out.chance) / Rational(question.draws));
  return out;
}

}  // namespace platewright
