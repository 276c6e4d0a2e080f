// SPDX-License-Identifier: MIT
#pragma once
// What a kitchen knows about an ingredient: what it weighs, what is lost of it, what it contains.

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/place.hpp"
#include "platewright/quantity/ingredient_weights.hpp"
#include "platewright/safety/food_kind.hpp"
#include "platewright/yield/ladder.hpp"

namespace platewright {

/// An ingredient as the recipes name it. Prices are another floor's business.
struct Ingredient {
  std::string name;
  IngredientWeights weights;
  /// The same by what is done with it: a cup of `chopped` onion is not a cup of `sliced` onion.
  std::map<std::string, IngredientWeights> prepared_weights;
  /// From the weight on the invoice to the weight on the plate; nothing lost where no yield is
  /// known.
  Ladder ladder;
  /// Whose yield it is, by the name of its row; empty where no yield is known.
  std::string yield_name;
  /// Meat or poultry, whose amounts in recipes are weights as purchased unless a line says
  /// otherwise.
  bool is_cut = false;
  /// Which minimum temperature applies, if any; nothing where the book does not say.
  std::optional<FoodKind> safety;
  std::string species;
  /// Allergens by key; nothing where the book does not say.
  std::optional<std::vector<std::string>> allergens;
  std::vector<std::string> may_contain = {};  ///< traces, by key, as the label says
  Place place;
};

/// The weights that count for a line with this preparation: those of the most particular
/// preparation whose every word is in it (`chopped` for `finely chopped`), else the ingredient's
/// own.
const IngredientWeights& weights_of(const Ingredient& ingredient, std::string_view preparation);

/// Refers to the ingredient, which must live longer.
const IngredientWeights& weights_of(const Ingredient&&, std::string_view) = delete;

/// A line's amount is written at this stage unless the line says otherwise: a cut as purchased,
/// everything else ready to cook (edible portion).
inline Stage usual_stage(const Ingredient& ingredient) {
  return ingredient.is_cut ? Stage::purchased : Stage::trimmed;
}

/// The share of the purchased weight that is there at `stage`, whether its ladder has that stage or
/// not (`Ladder::share_at`): produce with a trim yield alone is the same trimmed and cooked.
inline Rational yield_to(const Ingredient& ingredient, Stage stage) {
  return ingredient.ladder.share_at(stage);
}

/// `used` of the ingredient at `stage`, as the amount to take from the store, in `unit`; through
/// the weights that count for what the line does with it (`weights_of`). A count of whole things is
/// a count as purchased where it is bought by that count; everything else goes through its yield.
/// Throws Failure where a weight of a measure or a piece is missing.
Amount as_purchased(const Amount& used, Stage stage, const Ingredient& ingredient, const Unit& unit,
                    std::string_view preparation = {});

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/ingredient.hpp"
#endif
