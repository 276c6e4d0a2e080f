// SPDX-License-Identifier: MIT
#pragma once
// What one line of a scaled recipe takes from the store.

#include <optional>

#include "platewright/costing/day_text.hpp"
#include "platewright/costing/price_list.hpp"
#include "platewright/costing/unit_price.hpp"
#include "platewright/problem/catalogue/costs.hpp"
#include "platewright/recipe/piece_line.hpp"
#include "platewright/recipe/scaled_recipe.hpp"

namespace platewright {

/// The weight of one piece, as purchased, that the supplier delivers for a recipe that cooks whole
/// pieces: that of the preferred offer, if it goes by the piece.
inline std::optional<Mass> supplied_piece_weight(const Recipe& recipe, const RecipeBook& book,
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
inline std::optional<Amount> pieces_as_purchased(const ScaledRecipe& scaled, const ScaledLine& line,
                                                 const Ingredient& ingredient,
                                                 const RecipeBook& book, const Purchase& purchase) {
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

/// What the line takes from a supplier's pack; nothing where it is to taste. A range counts at its
/// upper end. The cut of a recipe that cooks whole pieces counts with what these weigh as
/// purchased, whatever share of it the line names. Throws Failure, at the line's place, as
/// `bought_for` does.
inline std::optional<Bought> bought_for(const ScaledRecipe& scaled, const ScaledLine& line,
                                        const Ingredient& ingredient, const RecipeBook& book,
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

/// What to say of an ingredient without an offer: that it has none, or none yet.
inline Problem no_price_of(const std::string& ingredient, const PriceEntry* entry) {
  if (entry == nullptr || !entry->first_price) return problems::price_missing(ingredient);
  return problems::price_later(ingredient, day_text(*entry->first_price));
}

/// The offer that an ingredient is bought by; none where it is free. Throws Failure, at `place`,
/// for an ingredient without a price.
inline const Purchase* preferred_purchase(const std::string& ingredient, const PriceList& prices,
                                          const Place& place) {
  const PriceEntry* entry = prices.find(ingredient);
  if (entry != nullptr && entry->free) return nullptr;
  if (entry == nullptr || entry->purchases.empty()) {
    throw Failure(at(no_price_of(ingredient, entry), place));
  }
  return &entry->purchases.front();
}
const Purchase* preferred_purchase(const std::string&, const PriceList&&, const Place&) = delete;

}  // namespace platewright
