// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/scaled_recipe.hpp.

#include <cstddef>
#include <utility>

#include "platewright/recipe/scaled_recipe.hpp"

namespace platewright {

PLATEWRIGHT_BODY void check_scaling_rule(const RecipeLine& line, const Recipe& recipe,
                                         bool has_vessel) {
  if (follows_pieces(line.scale) && !recipe.tested) {
    throw Failure(at(problems::by_surface_without_pieces(line.name), line.place));
  }
  if (follows_vessel(line.scale) && !has_vessel) {
    throw Failure(at(problems::vessel_missing(line.name), line.place));
  }
}

namespace detail {

PLATEWRIGHT_BODY ScaledLine scaled_line(const RecipeLine& line, const LineAmount& tested,
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
PLATEWRIGHT_BODY Rational share_factor(const WeightShare& share, const Recipe& recipe,
                                       const ScalePlan& plan, const RecipeBook& book) {
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

PLATEWRIGHT_BODY ScaledRecipe scale(const Recipe& recipe, ScalePlan plan, const RecipeBook& book) {
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

PLATEWRIGHT_BODY Rational batches_for(const Recipe& recipe, const Amount& wanted) {
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

}  // namespace platewright
