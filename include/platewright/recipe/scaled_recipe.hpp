#pragma once
// A recipe at the size that is wanted.

#include <string>
#include <utility>
#include <vector>

#include "platewright/recipe/recipe_book.hpp"
#include "platewright/recipe/scale_plan.hpp"

namespace platewright {

/// One line at its new size. `line` belongs to the recipe that was scaled.
struct ScaledLine {
  const RecipeLine* line = nullptr;
  Rational factor = 1;
  LineAmount amount;  ///< the whole
  LineAmount start;   ///< of a line that is held back, what goes in at first
};

/// A recipe and its lines at their new size. Refers to the recipe, which must live longer.
struct ScaledRecipe {
  const Recipe* recipe = nullptr;
  ScalePlan plan;
  std::vector<ScaledLine> lines;
};

/// Every line by its own rule. Throws Failure for a line that follows the surface of pieces in a
/// recipe that names none.
inline ScaledRecipe scale(const Recipe& recipe, ScalePlan plan) {
  ScaledRecipe out;
  out.recipe = &recipe;
  out.plan = std::move(plan);
  for (const RecipeLine& line : recipe.lines) {
    const bool needs_pieces =
        line.scale == ScalingRule::by_surface || line.scale == ScalingRule::by_piece;
    if (needs_pieces && !recipe.tested) {
      throw Failure(at(problems::by_surface_without_pieces(line.name), line.place));
    }
    ScaledLine scaled_line;
    scaled_line.line = &line;
    scaled_line.factor = factor_for(line.scale, out.plan);
    scaled_line.amount = scaled(line.amount, scaled_line.factor);
    scaled_line.start = scaled(scaled_line.amount, line.start_share);
    out.lines.push_back(std::move(scaled_line));
  }
  return out;
}

/// How many batches of `recipe` give `wanted`. Throws Failure where the recipe does not say what it
/// makes, or in a dimension that `wanted` does not have.
inline Rational batches_for(const Recipe& recipe, const Amount& wanted) {
  const auto makes = whole_amount(recipe);
  if (!makes) {
    if (recipe.makes.portions && wanted.dimension() == UnitDimension::pieces) {
      return wanted.canonical() / *recipe.makes.portions;
    }
    throw Failure(problems::recipe_has_no_amount(recipe.name));
  }
  if (!same_measure(makes->unit, wanted.unit)) {
    throw Failure(problems::recipe_amount_unreachable(recipe.name, amount_text(*makes),
                                                      amount_text(wanted)));
  }
  return wanted.canonical() / makes->canonical();
}

/// The amount that a line is costed and bought at: the upper end of a range, so that there is
/// enough; nothing where it is to taste.
inline std::optional<Amount> amount_to_buy(const LineAmount& amount) {
  return amount.high ? amount.high : amount.low;
}

}  // namespace platewright
