// SPDX-License-Identifier: MIT
#pragma once
// What an amount of an ingredient costs by one supplier's offer.

#include "platewright/costing/purchase.hpp"
#include "platewright/costing/trade_unit.hpp"
#include "platewright/problem/body.hpp"
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

void check_content(const Purchase& purchase);

namespace detail {

/// `amount`, which is in the measure that the pack has beside its content, as a part of the
/// content: of a bunch that weighs 2 oz, 1 oz is half a bunch.
inline Amount as_content(const Amount& amount, const Purchase& purchase) {
  return scaled(purchase.content, amount.canonical() / purchase.weighs->canonical());
}

}  // namespace detail

/// What one trade unit (`trade_unit`) comes to where `amount`, which must not be 0, comes to
/// `price`: 6.98 for 750 mL are 9.31 per L.
UnitPrice price_per_unit(const Money& price, const Amount& amount);

/// As-purchased price: price of the pack / content, for one trade unit. Throws Failure for a
/// content of 0 or less.
UnitPrice unit_price(const Purchase& purchase);

/// Edible-portion price: as-purchased price (less what its by-products are worth) / yield. `yield`
/// must be above 0.
inline UnitPrice edible_portion_price(const UnitPrice& as_purchased, const Rational& yield) {
  return {as_purchased.price / yield, as_purchased.unit};
}

/// What `used` of the ingredient at `stage`, prepared so, takes from a supplier's pack. Tried in
/// this order: the measure of the content; whole pieces of goods that are bought by the piece; the
/// pack's second measure; the ingredient's own weights of measures and pieces. Throws Failure where
/// none of them leads from one to the other, and for a pack that holds 0 or less.
Bought bought_for(const Amount& used, Stage stage, const Ingredient& ingredient,
                  const Purchase& purchase, std::string_view preparation = {});

/// What `bought`, in the measure of the offer's content, costs: price x amount / content.
Money price_of(const Amount& bought, const Purchase& purchase);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/unit_price.hpp"
#endif
