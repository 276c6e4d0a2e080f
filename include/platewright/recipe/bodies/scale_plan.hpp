// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/scale_plan.hpp.

#include <algorithm>
#include <utility>

#include "platewright/recipe/scale_plan.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY const TestedPieces& need_pieces(const Recipe& recipe) {
  if (!recipe.tested) throw Failure(problems::recipe_has_no_pieces(recipe.name));
  return *recipe.tested;
}

PLATEWRIGHT_BODY void count_portions(const Recipe& recipe, const RecipeBook& book,
                                     ScalePlan& plan) {
  if (const auto portions = counted_portions(recipe, book)) plan.portions = *portions * plan.factor;
}

PLATEWRIGHT_BODY Rational heavier_pieces(const Recipe& recipe, const ScalePlan& plan) {
  if (!recipe.tested || !plan.piece_weight) return 1;
  return *plan.piece_weight / recipe.tested->weight;
}

/// What the plan puts into vessels and batches, counted as `tested_content` is.
PLATEWRIGHT_BODY Rational planned_content(const Recipe& recipe, const ScalePlan& plan) {
  return plan.pieces ? *plan.pieces : tested_content(recipe) * plan.factor;
}

PLATEWRIGHT_BODY Filling batches_of(const Recipe& recipe, const Rational& content,
                                    const Rational& heavier) {
  const Rational largest = recipe.largest_batch.value_or(1) * tested_content(recipe);
  if (!recipe.tested) return spread_over(content, largest, false);
  return spread_over(content, std::max(largest / heavier, Rational(1)), true);
}

PLATEWRIGHT_BODY void count_batches(const Recipe& recipe, ScalePlan& plan) {
  plan.batches = batches_of(recipe, planned_content(recipe, plan), heavier_pieces(recipe, plan));
  plan.batch_factor = plan.batches.count / batches_of(recipe, tested_content(recipe), 1).count;
}

/// Whether something has to cover the meat.
PLATEWRIGHT_BODY bool is_covered(const Recipe& recipe) {
  return std::any_of(recipe.lines.begin(), recipe.lines.end(),
                     [](const RecipeLine& line) { return line.scale == ScalingRule::by_cover; });
}

PLATEWRIGHT_BODY Volume room_in_all(const RecipeVessel& vessel, const Filling& filling,
                                    const Volume& piece) {
  Volume out;
  for (const FilledAlike& part : filling.parts) {
    out += room_around(vessel, piece * part.content) * part.times;
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY ScalePlan in_vessels(const Recipe& recipe, ScalePlan plan,
                                      const RecipeVessel& vessel, const RecipeBook& book) {
  const RecipeVessel& tested_in = recipe.vessel ? *recipe.vessel : vessel;
  const bool whole = recipe.tested.has_value();
  const Rational heavier = detail::heavier_pieces(recipe, plan);
  const Filling tested =
      spread_over(tested_content(recipe), vessel_capacity(recipe, tested_in), whole);
  plan.vessel = vessel;
  plan.vessels = spread_over(detail::planned_content(recipe, plan),
                             vessel_capacity(recipe, vessel, heavier), whole);
  plan.vessel_factor = plan.vessels->count / tested.count;
  plan.cover_factor = plan.factor;
  if (!detail::is_covered(recipe)) return plan;
  const std::optional<Volume> piece = piece_volume(recipe, book);
  plan.cover_by_factor = !piece || !vessel.volume || !tested_in.volume || !plan.piece_weight;
  if (plan.cover_by_factor) return plan;
  plan.cover_factor = detail::room_in_all(vessel, *plan.vessels, *piece * heavier) /
                      detail::room_in_all(tested_in, tested, *piece);
  return plan;
}

namespace detail {

PLATEWRIGHT_BODY ScalePlan finished(const Recipe& recipe, const RecipeBook& book, ScalePlan plan) {
  count_portions(recipe, book, plan);
  count_batches(recipe, plan);
  plan.cover_factor = plan.factor;
  return recipe.vessel ? in_vessels(recipe, std::move(plan), *recipe.vessel, book) : plan;
}

}  // namespace detail

PLATEWRIGHT_BODY ScalePlan plan_for_pieces(const Recipe& recipe, const Rational& pieces,
                                           const RecipeBook& book,
                                           const std::optional<Mass>& weight) {
  const TestedPieces& tested = detail::need_pieces(recipe);
  check_positive("a number of pieces", pieces);
  ScalePlan plan;
  plan.pieces = up_to(pieces, 1);
  plan.rounded_up = *plan.pieces != pieces;
  plan.piece_weight = weight.value_or(tested.weight);
  check_positive("a weight of a piece", *plan.piece_weight);
  const Rational heavier = *plan.piece_weight / tested.weight;
  plan.asked = pieces * heavier / tested.count;
  plan.piece_factor = *plan.pieces / tested.count;
  plan.factor = plan.piece_factor * heavier;
  plan.surface_factor = plan.piece_factor * two_thirds_power(heavier);
  return detail::finished(recipe, book, std::move(plan));
}

PLATEWRIGHT_BODY ScalePlan plan_for_factor(const Recipe& recipe, const Rational& factor,
                                           const RecipeBook& book,
                                           const std::optional<Mass>& weight) {
  check_positive("a factor", factor);
  if (recipe.tested) {
    if (weight) check_positive("a weight of a piece", *weight);
    const Rational heavier = weight ? *weight / recipe.tested->weight : Rational(1);
    return plan_for_pieces(recipe, factor * recipe.tested->count / heavier, book, weight);
  }
  ScalePlan plan;
  plan.asked = factor;
  plan.factor = recipe.whole_batches ? up_to(factor, 1) : factor;
  plan.rounded_up = plan.factor != factor;
  plan.piece_factor = plan.surface_factor = plan.factor;
  return detail::finished(recipe, book, std::move(plan));
}

PLATEWRIGHT_BODY ScalePlan plan_for_portions(const Recipe& recipe, const Rational& portions,
                                             const RecipeBook& book,
                                             const std::optional<Mass>& weight) {
  check_positive("a number of portions", portions);
  if (!recipe.makes.portions) throw Failure(problems::recipe_has_no_portions(recipe.name));
  return plan_for_factor(recipe, portions / *counted_portions(recipe, book), book, weight);
}

PLATEWRIGHT_BODY ScalePlan plan_for_portion_size(const Recipe& recipe, const Amount& portion,
                                                 const RecipeBook& book,
                                                 const std::optional<Rational>& portions,
                                                 const std::optional<Mass>& weight) {
  check_positive("a portion", portion.number);
  if (!recipe.makes.portions || !recipe.makes.portion) {
    throw Failure(problems::recipe_has_no_portion_size(recipe.name));
  }
  const Rational counted = *counted_portions(recipe, book);
  const Rational count = portions.value_or(counted);
  check_positive("a number of portions", count);
  const Rational larger =
      in_unit(portion, recipe.makes.portion->unit).number / recipe.makes.portion->number;
  ScalePlan plan = plan_for_factor(recipe, count / counted * larger, book, weight);
  plan.portion = portion;
  plan.portions = *plan.portions / larger;
  return plan;
}

PLATEWRIGHT_BODY Rational factor_for(ScalingRule rule, const ScalePlan& plan) {
  switch (rule) {
    case ScalingRule::by_surface:
      return plan.surface_factor;
    case ScalingRule::by_piece:
      return plan.piece_factor;
    case ScalingRule::by_pan:
      return plan.vessel_factor;
    case ScalingRule::by_batch:
      return plan.batch_factor;
    case ScalingRule::by_cover:
      return plan.cover_factor;
    case ScalingRule::spice_on_double:
    case ScalingRule::herb_formula:
    case ScalingRule::hot_pepper:
      return spice_factor(rule, plan.factor);
    case ScalingRule::fixed:
      return 1;
    case ScalingRule::proportional:
    case ScalingRule::held_back:
      break;
  }
  return plan.factor;
}

}  // namespace platewright
