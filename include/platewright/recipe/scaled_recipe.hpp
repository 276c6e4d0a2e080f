// SPDX-License-Identifier: MIT
#pragma once
// A recipe at the size that is wanted.

#include <optional>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/scale_plan.hpp"
#include "platewright/recipe/tested_amount.hpp"

namespace platewright {

/// One line at its new size. `line` belongs to the recipe that was scaled, what it names to the
/// book.
struct ScaledLine {
  const RecipeLine* line;
  const Recipe* recipe;          ///< the recipe that it names; null where that is an ingredient
  const Ingredient* ingredient;  ///< null where it is a recipe, or nothing that the book has
  Rational factor;
  LineAmount tested;  ///< in the tested batch
  LineAmount amount;  ///< the whole
  LineAmount start;   ///< of a line that is held back, what goes in at first
};

/// A recipe and its lines at their new size. Refers to the recipe and the book, which must live
/// longer.
struct ScaledRecipe {
  const Recipe* recipe;
  ScalePlan plan;
  std::vector<ScaledLine> lines;
};

/// Throws Failure, at the line's place, for a rule that follows what the recipe does not name.
void check_scaling_rule(const RecipeLine& line, const Recipe& recipe, bool has_vessel);

namespace detail {

ScaledLine scaled_line(const RecipeLine& line, const LineAmount& tested, const Rational& factor,
                       const RecipeBook& book);

}  // namespace detail

/// Every line by its own rule; one that is a share of other lines follows their weight. Throws
/// Failure, at the line's place, for a line that follows pieces or a vessel in a recipe that names
/// none, and for a share of what has no weight.
ScaledRecipe scale(const Recipe& recipe, ScalePlan plan, const RecipeBook& book);
ScaledRecipe scale(const Recipe&&, ScalePlan, const RecipeBook&) = delete;
ScaledRecipe scale(const Recipe&, ScalePlan, const RecipeBook&&) = delete;
ScaledRecipe scale(const Recipe&&, ScalePlan, const RecipeBook&&) = delete;

/// How many batches of `recipe` give `wanted`, what is lost of them on the way counted in. Throws
/// Failure where the recipe does not say what it makes, or in a dimension that `wanted` does not
/// have.
Rational batches_for(const Recipe& recipe, const Amount& wanted);

/// The amount that a line is costed and bought at: the upper end of a range, so that there is
/// enough; nothing where it is to taste.
inline std::optional<Amount> amount_to_buy(const LineAmount& amount) {
  return amount.high() ? amount.high() : amount.low();
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/scaled_recipe.hpp"
#endif
