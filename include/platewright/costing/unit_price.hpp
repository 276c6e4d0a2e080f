// SPDX-License-Identifier: MIT
#pragma once
// What an amount of an ingredient costs by one supplier's offer.

#include "platewright/costing/purchase.hpp"
#include "platewright/costing/trade_unit.hpp"
#include "platewright/quantity/positive.hpp"
#include "platewright/recipe/ingredient.hpp"

namespace platewright {

/// The price of one unit: 8.95 for 1 lb.
struct UnitPrice {
  Money price;
  Unit unit;
};

/// What is taken from the store for an amount that is used.
struct Bought {
  Amount amount;       ///< as purchased, in the unit of the offer's content
  Rational yield = 1;  ///< used over purchased; 1 where whole things are counted as they are bought
};

inline void check_content(const Purchase& purchase) {
  check_positive("a content of a pack", purchase.content.number);
  if (purchase.weighs) check_positive("a weight of a pack", purchase.weighs->number);
}

namespace detail {

/// `amount`, which is in the measure that the pack has beside its content, as a part of the
/// content: of a bunch that weighs 2 oz, 1 oz is half a bunch.
inline Amount as_content(const Amount& amount, const Purchase& purchase) {
  return scaled(purchase.content, amount.canonical() / purchase.weighs->canonical());
}

/// Through the ingredient's yield and weights. The weights of pieces are those of the edible
/// portion, so that the trim is in them already where goods are bought by the count and used by
/// weight.
inline Bought bought_by_weight(const Amount& used, Stage stage, const Ingredient& ingredient,
                               const Unit& unit, std::string_view preparation) {
  const Rational yield = yield_to(ingredient, stage);
  const Amount amount = as_purchased(used, stage, ingredient, unit, preparation);
  if (unit.dimension() != UnitDimension::pieces) return {amount, yield};
  const Rational trim_yield = yield_to(ingredient, Stage::trimmed);
  return {scaled(amount, trim_yield), yield / trim_yield};
}

}  // namespace detail

/// What one trade unit (`trade_unit`) comes to where `amount`, which must not be 0, comes to
/// `price`: 6.98 for 750 mL are 9.31 per L.
inline UnitPrice price_per_unit(const Money& price, const Amount& amount) {
  const Unit unit = trade_unit(amount.unit);
  return {price / in_unit(amount, unit).number, unit};
}

/// As-purchased price: price of the pack / content, for one trade unit. Throws Failure for a
/// content of 0 or less.
inline UnitPrice unit_price(const Purchase& purchase) {
  check_content(purchase);
  return price_per_unit(purchase.price, purchase.content);
}

/// Edible-portion price: as-purchased price (less what its by-products are worth) / yield. `yield`
/// must be above 0.
inline UnitPrice edible_portion_price(const UnitPrice& as_purchased, const Rational& yield) {
  return {as_purchased.price / yield, as_purchased.unit};
}

/// What `used` of the ingredient at `stage`, prepared so, takes from a supplier's pack. Tried in
/// this order: the measure of the content; whole pieces of goods that are bought by the piece; the
/// pack's second measure; the ingredient's own weights of measures and pieces. Throws Failure where
/// none of them leads from one to the other, and for a pack that holds 0 or less.
inline Bought bought_for(const Amount& used, Stage stage, const Ingredient& ingredient,
                         const Purchase& purchase, std::string_view preparation = {}) {
  check_content(purchase);
  const Unit& unit = purchase.content.unit;
  const bool counted = used.dimension() == UnitDimension::pieces;
  if (counted && same_measure(used.unit, unit)) return {in_unit(used, unit), 1};
  if (counted && purchase.by_the_piece && used.unit.kind() == "each") {
    return {scaled(purchase.content, used.canonical()), 1};
  }
  if (purchase.weighs && counted && same_measure(used.unit, purchase.weighs->unit)) {
    return {detail::as_content(used, purchase), 1};
  }
  if (purchase.weighs && !same_measure(used.unit, unit)) {
    const Bought weighed =
        detail::bought_by_weight(used, stage, ingredient, purchase.weighs->unit, preparation);
    return {detail::as_content(weighed.amount, purchase), weighed.yield};
  }
  return detail::bought_by_weight(used, stage, ingredient, unit, preparation);
}

/// What `bought`, in the measure of the offer's content, costs: price x amount / content.
inline Money price_of(const Amount& bought, const Purchase& purchase) {
  check_content(purchase);
  return purchase.price *
         (in_unit(bought, purchase.content.unit).canonical() / purchase.content.canonical());
}

}  // namespace platewright
