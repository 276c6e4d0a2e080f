// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/price_spread.hpp.

#include <algorithm>
#include <map>

#include "platewright/event/price_spread.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool UncertainCost::is_known() const {
  return price_deviation > 0 || yield_deviation > 0 || weight_deviation > 0;
}

PLATEWRIGHT_BODY Rational price_deviation(const PriceEntry& history) {
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

PLATEWRIGHT_BODY Rational variance_of_bounds(const Ladder& ladder) {
  Rational out;
  for (const Rung& rung : ladder.rungs()) {
    if (rung.spread.standard_deviation || !rung.spread.low || !rung.spread.high) continue;
    const Rational relative = (*rung.spread.high - *rung.spread.low) / rung.yield;
    out += relative * relative / 12;
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY Rational weight_deviation(const Purchase& purchase, const Money& cost) {
  if (!purchase.by_the_piece || !purchase.spread || purchase.price <= Money()) return 0;
  const Rational pieces = std::max(Rational(1), Rational(floor_of(cost / purchase.price)));
  return purchase.spread->canonical() / purchase.content.canonical() / square_root(pieces);
}

namespace detail {

/// What each ingredient costs in `cost`, its sub-recipes followed down to what is bought.
PLATEWRIGHT_BODY void add_bought_costs(const PlateCost& cost, const Rational& share,
                                       PlateCosting& costing, std::map<std::string, Money>& out) {
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

PLATEWRIGHT_BODY std::vector<UncertainCost> uncertain_costs(const Occasion& occasion,
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
