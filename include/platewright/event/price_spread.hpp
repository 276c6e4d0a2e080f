// SPDX-License-Identifier: MIT
#pragma once
// How far prices and yields of an event's ingredients lie apart.

#include <algorithm>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/occasion.hpp"
#include "platewright/yield/how_sure.hpp"

namespace platewright {

/// The part of the food's cost that one ingredient has, and how far its price, its yield and the
/// weight of its pieces lie apart, each as a standard deviation relative to the average; 0 where
/// nothing is known.
struct UncertainCost {
  std::string ingredient;
  Money cost;
  Rational price_deviation;
  Rational yield_deviation;
  Rational weight_deviation = 0;

  bool is_known() const {
    return price_deviation > 0 || yield_deviation > 0 || weight_deviation > 0;
  }
};

/// The relative standard deviation of the prices for one unit in a supplier's history (its offers
/// with a date, in one measure; n - 1 in the denominator); 0 for fewer than two.
inline Rational price_deviation(const PriceEntry& history) {
  std::vector<Rational> prices;
  for (const Purchase& purchase : history.purchases) {
    const Purchase& first = history.purchases.front();
    if (!purchase.on || !same_measure(purchase.content.unit, first.content.unit)) continue;
    prices.push_back(purchase.price.in(units::currency_unit) / purchase.content.canonical());
  }
  if (prices.size() < 2) return 0;
  Rational sum;
  for (const Rational& price : prices) sum += price;
  const Rational average = sum / Rational(prices.size());
  if (average == 0) return 0;
  Rational squares;
  for (const Rational& price : prices) squares += (price - average) * (price - average);
  return square_root(squares / Rational(prices.size() - 1)) / average;
}

namespace detail {

/// The relative variance of the rungs that print bounds and no deviation: that of values that lie
/// anywhere between them alike, (high - low)^2 / 12 (JCGM 100:2008, 4.3.7).
inline Rational variance_of_bounds(const Ladder& ladder) {
  Rational out;
  for (const Rung& rung : ladder.rungs()) {
    if (rung.spread.standard_deviation || !rung.spread.low || !rung.spread.high) continue;
    const Rational relative = (*rung.spread.high - *rung.spread.low) / rung.yield;
    out += relative * relative / 12;
  }
  return out;
}

}  // namespace detail

/// The relative standard deviation of the yield of one roast, from the deviations and the bounds of
/// the rungs that have them: published, or of trials.
inline Rational yield_deviation(const Ladder& ladder) {
  return square_root(relative_variance(ladder).over(1) + detail::variance_of_bounds(ladder));
}

/// The relative standard deviation of the weight of so many pieces together as are paid with
/// `cost`: that of one / sqrt(pieces); 0 for goods that are not bought by the piece.
inline Rational weight_deviation(const Purchase& purchase, const Money& cost) {
  if (!purchase.by_the_piece || !purchase.spread || purchase.price <= Money()) return 0;
  const Rational pieces = std::max(Rational(1), Rational(floor_of(cost / purchase.price)));
  return purchase.spread->canonical() / purchase.content.canonical() / square_root(pieces);
}

namespace detail {

/// What each ingredient costs in `cost`, its sub-recipes followed down to what is bought.
inline void add_bought_costs(const PlateCost& cost, const Rational& share, PlateCosting& costing,
                             std::map<std::string, Money>& out) {
  for (const CostLine& line : cost.lines) {
    if (!line.is_recipe) {
      out[line.name] += line.cost * share;
      continue;
    }
    const PlateCost& batch = costing.batch(line.name);
    if (batch.total > Money()) {
      add_bought_costs(batch, share * (line.cost / batch.total), costing, out);
    }
  }
}

}  // namespace detail

/// The food of an occasion by ingredient. The spread of prices comes from `history`, that of yields
/// from the ingredients' ladders, that of a piece's weight from its offer. The costs sum to the
/// food exactly.
inline std::vector<UncertainCost> uncertain_costs(const Occasion& occasion,
                                                  const PriceList& history) {
  PlateCosting costing(occasion.book, occasion.prices);
  std::map<std::string, Money> costs;
  for (const PlateCost& dish : event_cost(occasion).dishes) {
    detail::add_bought_costs(dish, 1, costing, costs);
  }
  std::vector<UncertainCost> out;
  for (const auto& [name, cost] : costs) {
    const PriceEntry* entry = history.find(name);
    const PriceEntry* offers = occasion.prices.find(name);
    const bool bought = offers != nullptr && !offers->purchases.empty();
    out.push_back({name, cost, entry == nullptr ? Rational(0) : price_deviation(*entry),
                   yield_deviation(occasion.book.ingredient(name).ladder),
                   bought ? weight_deviation(offers->purchases.front(), cost) : Rational(0)});
  }
  return out;
}

}  // namespace platewright
