// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/plan_for_short.hpp.

#include "platewright/recipe/plan_for_short.hpp"

namespace platewright {

PLATEWRIGHT_BODY ScalePlan plan_for_short(const Recipe& recipe, const std::string& name,
                                          const Amount& on_hand, const RecipeBook& book) {
  check_positive("an amount on hand", on_hand.number);
  const Taken taken = taken_of(recipe, name, on_hand.unit, book);
  const Rational factor = on_hand.number / taken.number;
  Rational made = factor;
  if (recipe.tested || recipe.whole_batches) {
    const Rational count = recipe.tested ? recipe.tested->count : Rational(1);
    const Rational pieces = down_to(factor * count, 1);
    const std::string piece = recipe.tested ? recipe.tested->piece : "batch";
    if (pieces == 0) throw Failure(problems::short_of_a_piece(name, piece));
    made = pieces / count;
  }
  ScalePlan plan = plan_for_factor(recipe, made, book);
  plan.asked = factor;
  plan.on_hand = OnHand{name, on_hand, taken.takers};
  return plan;
}

PLATEWRIGHT_BODY ScalePlan plan_for_weight_on_hand(const Recipe& recipe, const Mass& on_hand,
                                                   const RecipeBook& book) {
  check_positive("a weight on hand", on_hand);
  if (recipe.lines.empty() || recipe.lines.front().amount.to_taste()) {
    throw Failure(problems::scale_missing_factor());
  }
  const RecipeLine& first = recipe.lines.front();
  const Amount written = *tested_amount(first, recipe, book).low();
  check_positive("an amount of the first line", to_mass(written));
  const Ingredient* ingredient = book.find_ingredient(first.name);
  std::optional<Stage> stage = first.stage;
  if (!stage && ingredient != nullptr) stage = usual_stage(*ingredient);
  const Taken taken = taken_of(recipe, first.name, written.unit, book, stage);
  ScalePlan plan;
  plan.on_hand = OnHand{first.name, to_amount(on_hand, written.unit), taken.takers};
  plan.asked = plan.on_hand->amount.number / taken.number;
  plan.factor = plan.piece_factor = plan.surface_factor = plan.asked;
  if (recipe.tested) {
    plan.pieces = plan.factor * recipe.tested->count;
    plan.piece_weight = recipe.tested->weight;
  }
  return detail::finished(recipe, book, std::move(plan));
}

}  // namespace platewright
