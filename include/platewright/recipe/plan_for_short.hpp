#pragma once
// As much as the one ingredient that is short allows.

#include <string>
#include <vector>

#include "platewright/recipe/recipe_book.hpp"
#include "platewright/recipe/scaled_recipe.hpp"

namespace platewright {

namespace detail {

/// True for a rule by which twice the batch takes twice the line.
inline bool follows_the_batch(const RecipeLine& line) {
  return line.scale == ScalingRule::proportional || line.scale == ScalingRule::held_back ||
         follows_pieces(line.scale);
}

/// What the recipe's lines of that name take in the tested batch, as it comes from the store, in
/// `unit`; the upper end of a range, so that there is enough.
inline Rational tested_use(const Recipe& recipe, const std::string& name, const Unit& unit,
                           const RecipeBook& book) {
  const Ingredient* ingredient = book.find_ingredient(name);
  std::vector<std::string> names;
  Rational used;
  for (const RecipeLine& line : recipe.lines) {
    names.push_back(line.name);
    const auto amount = amount_to_buy(line.amount);
    if (line.name != name || !amount) continue;
    if (!follows_the_batch(line)) {
      throw Failure(problems::short_line_unusable(name, name_of(line.scale)));
    }
    if (ingredient == nullptr) {
      used += in_unit(*amount, unit).number;
    } else {
      used += as_purchased(*amount, line.stage.value_or(usual_stage(*ingredient)),
                           prepared(*ingredient, line.preparation), unit)
                  .number;
    }
  }
  if (used == 0) {
    throw Failure(problems::name_unknown("line", name, names, "name a line of the recipe"));
  }
  return used;
}

}  // namespace detail

/// The batch that uses up `on_hand` of the ingredient (or recipe) `name`, counted as it comes from
/// the store: on hand over what the tested batch takes. A recipe of whole pieces makes as many
/// whole ones as there is enough for. Throws Failure for a name that no line has, for a line that
/// does not follow the size of the batch, where a weight is missing to compare the two amounts, and
/// where there is not enough for one piece.
inline ScalePlan plan_for_short(const Recipe& recipe, const std::string& name,
                                const Amount& on_hand, const RecipeBook& book) {
  detail::expect_above_zero("an amount on hand", on_hand.number);
  const Rational factor = on_hand.number / detail::tested_use(recipe, name, on_hand.unit, book);
  if (recipe.tested) {
    const Rational pieces = down_to(factor * recipe.tested->count, 1);
    if (pieces == 0) throw Failure(problems::short_of_a_piece(name, recipe.tested->piece));
    ScalePlan plan = plan_for_pieces(recipe, pieces);
    plan.asked = factor;
    return plan;
  }
  if (recipe.whole_batches) {
    const Rational batches = down_to(factor, 1);
    if (batches == 0) throw Failure(problems::short_of_a_piece(name, "batch"));
    ScalePlan plan = plan_for_factor(recipe, batches);
    plan.asked = factor;
    return plan;
  }
  return plan_for_factor(recipe, factor);
}

}  // namespace platewright
