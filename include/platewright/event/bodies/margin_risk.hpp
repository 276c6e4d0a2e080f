// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/margin_risk.hpp.

#include <cmath>
#include <random>
#include <string>

#include "platewright/event/margin_risk.hpp"

namespace platewright {

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

PLATEWRIGHT_BODY MarginRisk margin_risk(const Quote& quote, const std::vector<UncertainCost>& costs,
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
