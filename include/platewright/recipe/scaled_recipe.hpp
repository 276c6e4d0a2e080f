// SPDX-License-Identifier: MIT
#pragma once
// A recipe at the size that is wanted.

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

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
inline void check_scaling_rule(const RecipeLine& line, const Recipe& recipe, bool has_vessel) {
  if (follows_pieces(line.scale) && !recipe.tested) {
    throw Failure(at(problems::by_surface_without_pieces(line.name), line.place));
  }
  if (follows_vessel(line.scale) && !has_vessel) {
    throw Failure(at(problems::vessel_missing(line.name), line.place));
  }
}

namespace detail {

inline ScaledLine scaled_line(const RecipeLine& line, const LineAmount& tested,
                              const Rational& factor, const RecipeBook& book) {
  const LineAmount amount = scaled(tested, factor);
  const Recipe* recipe = book.recipe_of(line);
  return {&line,
          recipe,
          recipe == nullptr ? book.find_ingredient(line.name) : nullptr,
          factor,
          tested,
          amount,
          scaled(amount, line.start_share)};
}

/// The factor of a line that is a share of others: their new weight over their tested weight.
inline Rational share_factor(const WeightShare& share, const Recipe& recipe, const ScalePlan& plan,
                             const RecipeBook& book) {
  Mass before;
  Mass after;
  for (const std::size_t i : lines_shared(share, recipe, book)) {
    const Mass weight = *tested_weight(recipe.lines[i], book);
    before += weight;
    after += weight * factor_for(recipe.lines[i].scale, plan);
  }
  return after / before;
}

}  // namespace detail

/// Every line by its own rule; one that is a share of other lines follows their weight. Throws
/// Failure, at the line's place, for a line that follows pieces or a vessel in a recipe that names
/// none, and for a share of what has no weight.
inline ScaledRecipe scale(const Recipe& recipe, ScalePlan plan, const RecipeBook& book) {
  std::vector<ScaledLine> lines;
  lines.reserve(recipe.lines.size());
  for (const RecipeLine& line : recipe.lines) {
    check_scaling_rule(line, recipe, plan.vessel.has_value());
    const LineAmount tested = tested_amount(line, recipe, book);
    const WeightShare* share = line.amount.share();
    const Rational factor = share == nullptr ? factor_for(line.scale, plan)
                                             : detail::share_factor(*share, recipe, plan, book);
    lines.push_back(detail::scaled_line(line, tested, factor, book));
  }
  return {&recipe, std::move(plan), std::move(lines)};
}
ScaledRecipe scale(const Recipe&&, ScalePlan, const RecipeBook&) = delete;
ScaledRecipe scale(const Recipe&, ScalePlan, const RecipeBook&&) = delete;
ScaledRecipe scale(const Recipe&&, ScalePlan, const RecipeBook&&) = delete;

/// How many batches of `recipe` give `wanted`, what is lost of them on the way counted in. Throws
/// Failure where the recipe does not say what it makes, or in a dimension that `wanted` does not
/// have.
inline Rational batches_for(const Recipe& recipe, const Amount& wanted) {
  const auto makes = whole_amount(recipe);
  if (!makes) {
    if (recipe.makes.portions && wanted.dimension() == UnitDimension::pieces) {
      return wanted.canonical() / (*recipe.makes.portions * (1 - recipe.lost));
    }
    throw Failure(problems::recipe_has_no_amount(recipe.name));
  }
  if (!same_measure(makes->unit, wanted.unit)) {
    throw Failure(
        problems::recipe_amount_unreachable(recipe.name, amount_text(*makes), amount_text(wanted)));
  }
  return wanted.canonical() / (makes->canonical() * (1 - recipe.lost));
}

/// The amount that a line is costed and bought at: the upper end of a range, so that there is
/// enough; nothing where it is to taste.
inline std::optional<Amount> amount_to_buy(const LineAmount& amount) {
  return amount.high() ? amount.high() : amount.low();
}

}  // namespace platewright
