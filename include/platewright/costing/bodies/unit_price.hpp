// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/unit_price.hpp.

#include "platewright/costing/unit_price.hpp"

namespace platewright {

PLATEWRIGHT_BODY void check_content(const Purchase& purchase) {
  check_positive("a content of a pack", purchase.content.number);
  if (purchase.weighs) check_positive("a weight of a pack", purchase.weighs->number);
}

namespace detail {

/// Through the ingredient's yield and weights. The weights of pieces are those of the edible
/// portion, so that the trim is in them already where goods are bought by the count and used by
/// weight.
PLATEWRIGHT_BODY Bought bought_by_weight(const Amount& used, Stage stage,
                                         const Ingredient& ingredient, const Unit& unit,
                                         std::string_view preparation) {
  const Rational yield = yield_to(ingredient, stage);
  const Amount amount = as_purchased(used, stage, ingredient, unit, preparation);
  if (unit.dimension() != UnitDimension::pieces) return {amount, yield};
  const Rational trim_yield = yield_to(ingredient, Stage::trimmed);
  return {scaled(amount, trim_yield), yield / trim_yield};
}

}  // namespace detail

PLATEWRIGHT_BODY UnitPrice price_per_unit(const Money& price, const Amount& amount) {
  const Unit unit = trade_unit(amount.unit);
  return {price / in_unit(amount, unit).number, unit};
}

PLATEWRIGHT_BODY UnitPrice unit_price(const Purchase& purchase) {
  check_content(purchase);
  return price_per_unit(purchase.price, purchase.content);
}

PLATEWRIGHT_BODY Bought bought_for(const Amount& used, Stage stage, const Ingredient& ingredient,
                                   const Purchase& purchase, std::string_view preparation) {
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

PLATEWRIGHT_BODY Money price_of(const Amount& bought, const Purchase& purchase) {
  check_content(purchase);
  return purchase.price *
         (in_unit(bought, purchase.content.unit).canonical() / purchase.content.canonical());
}

}  // namespace platewright
