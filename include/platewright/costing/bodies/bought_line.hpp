// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/bought_line.hpp.

#include "platewright/costing/bought_line.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Mass> supplied_piece_weight(const Recipe& recipe,
                                                           const RecipeBook& book,
                                                           const PriceList& prices) {
  const RecipeLine* line = piece_line(recipe, book);
  const PriceEntry* entry =
      line == nullptr || book.recipe_of(*line) != nullptr ? nullptr : prices.find(line->name);
  if (entry == nullptr || entry->purchases.empty()) return std::nullopt;
  const Purchase& purchase = entry->purchases.front();
  if (!purchase.by_the_piece || purchase.content.dimension() != UnitDimension::mass) {
    return std::nullopt;
  }
  return to_mass(purchase.content);
}

namespace detail {

/// The purchased weight of all pieces, for the line that they are; nothing for every other line.
PLATEWRIGHT_BODY std::optional<Amount> pieces_as_purchased(const ScaledRecipe& scaled,
                                                           const ScaledLine& line,
                                                           const Ingredient& ingredient,
                                                           const RecipeBook& book,
                                                           const Purchase& purchase) {
  if (!ingredient.is_cut || !scaled.plan.pieces || !scaled.plan.piece_weight) return std::nullopt;
  if (line.line != piece_line(*scaled.recipe, book)) return std::nullopt;
  const Mass weight = *scaled.plan.piece_weight * *scaled.plan.pieces;
  if (purchase.content.dimension() == UnitDimension::mass) {
    return to_amount(weight, purchase.content.unit);
  }
  if (purchase.weighs && purchase.weighs->dimension() == UnitDimension::mass) {
    return as_content(to_amount(weight, purchase.weighs->unit), purchase);
  }
  return std::nullopt;
}

}  // namespace detail

PLATEWRIGHT_BODY std::optional<Bought> bought_for(const ScaledRecipe& scaled,
                                                  const ScaledLine& line,
                                                  const Ingredient& ingredient,
                                                  const RecipeBook& book,
                                                  const Purchase& purchase) {
  const std::optional<Amount> used = amount_to_buy(line.amount);
  if (!used) return std::nullopt;
  try {
    if (auto pieces = detail::pieces_as_purchased(scaled, line, ingredient, book, purchase)) {
      const bool same = same_measure(used->unit, pieces->unit);
      const Rational yield = same ? used->canonical() / pieces->canonical() : Rational(1);
      return Bought{*pieces, yield};
    }
    return bought_for(*used, stage_of(*line.line, ingredient), ingredient, purchase,
                      line.line->preparation);
  } catch (const Failure& failure) {
    throw Failure(at(failure.problem(), line.line->place));
  }
}

PLATEWRIGHT_BODY Problem no_price_of(const std::string& ingredient, const PriceEntry* entry) {
  if (entry == nullptr || !entry->first_price) return problems::price_missing(ingredient);
  return problems::price_later(ingredient, day_text(*entry->first_price));
}

PLATEWRIGHT_BODY const Purchase* preferred_purchase(const std::string& ingredient,
                                                    const PriceList& prices, const Place& place) {
  const PriceEntry* entry = prices.find(ingredient);
  if (entry != nullptr && entry->free) return nullptr;
  if (entry == nullptr || entry->purchases.empty()) {
    throw Failure(at(no_price_of(ingredient, entry), place));
  }
  return &entry->purchases.front();
}

}  // namespace platewright
