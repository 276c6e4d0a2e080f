// SPDX-License-Identifier: MIT
#pragma once
// What one line of a scaled recipe takes from the store.

#include <optional>

#include "platewright/costing/day_text.hpp"
#include "platewright/costing/price_list.hpp"
#include "platewright/costing/unit_price.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/costs.hpp"
#include "platewright/recipe/piece_line.hpp"
#include "platewright/recipe/scaled_recipe.hpp"

namespace platewright {

/// The weight of one piece, as purchased, that the supplier delivers for a recipe that cooks whole
/// pieces: that of the preferred offer, if it goes by the piece.
std::optional<Mass> supplied_piece_weight(const Recipe& recipe, const RecipeBook& book,
                                          const PriceList& prices);

/// What the line takes from a supplier's pack; nothing where it is to taste. A range counts at its
/// upper end. The cut of a recipe that cooks whole pieces counts with what these weigh as
/// purchased, whatever share of it the line names. Throws Failure, at the line's place, as
/// `bought_for` does.
std::optional<Bought> bought_for(const ScaledRecipe& scaled, const ScaledLine& line,
                                 const Ingredient& ingredient, const RecipeBook& book,
                                 const Purchase& purchase);

/// What to say of an ingredient without an offer: that it has none, or none yet.
Problem no_price_of(const std::string& ingredient, const PriceEntry* entry);

/// The offer that an ingredient is bought by; none where it is free. Throws Failure, at `place`,
/// for an ingredient without a price.
const Purchase* preferred_purchase(const std::string& ingredient, const PriceList& prices,
                                   const Place& place);
const Purchase* preferred_purchase(const std::string&, const PriceList&&, const Place&) = delete;

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/bought_line.hpp"
#endif
