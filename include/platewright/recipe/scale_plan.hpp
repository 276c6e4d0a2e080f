// SPDX-License-Identifier: MIT
#pragma once
// From one tested batch to the batch that is wanted.

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/number/write.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/positive.hpp"
#include "platewright/recipe/filling.hpp"
#include "platewright/recipe/piece_volume.hpp"
#include "platewright/recipe/portions_by_yield.hpp"
#include "platewright/recipe/power.hpp"
#include "platewright/recipe/spice_factor.hpp"
#include "platewright/recipe/vessel_capacity.hpp"

namespace platewright {

/// An ingredient of which there is so much and no more.
struct OnHand {
  std::string name;
  Amount amount;
  std::vector<std::string> takers;  ///< the recipes whose lines take it: this one, and below it
};

/// The factors that the lines of one batch follow. None of them is rounded; where the recipe cooks
/// whole pieces, the number of pieces is, and every factor follows from the pieces that are cooked.
struct ScalePlan {
  Rational asked = 1;              ///< recipe conversion factor as asked for: new yield / old yield
  Rational factor = 1;             ///< recipe conversion factor as made
  Rational piece_factor = 1;       ///< pieces / tested pieces
  Rational surface_factor = 1;     ///< pieces / tested pieces x (weight / tested weight)^(2/3)
  std::optional<Rational> pieces;  ///< whole pieces that are cooked
  std::optional<Mass> piece_weight;
  std::optional<Rational> portions;  ///< what is made, if the recipe counts portions
  std::optional<Amount> portion;     ///< the size of a portion, where it is not the recipe's own
  bool rounded_up = false;           ///< a part of a piece, or of a whole batch, was asked for
  Filling batches = {};              ///< times that it is made; each at most the largest batch
  Rational batch_factor = 1;         ///< batches / tested batches
  std::optional<RecipeVessel> vessel;
  std::optional<Filling> vessels;  ///< whole vessels that are filled
  Rational vessel_factor = 1;      ///< vessels / tested vessels
  Rational cover_factor = 1;       ///< volume left around the meat / the same as tested
  /// The cover factor is the plain factor, as the volume of the vessel or of the meat is not known.
  bool cover_by_factor = true;
  std::optional<OnHand> on_hand = {};  ///< what decided the size, where an amount on hand did
};

namespace detail {

inline const TestedPieces& need_pieces(const Recipe& recipe) {
  if (!recipe.tested) throw Failure(problems::recipe_has_no_pieces(recipe.name));
  return *recipe.tested;
}

inline void count_portions(const Recipe& recipe, const RecipeBook& book, ScalePlan& plan) {
  if (const auto portions = counted_portions(recipe, book)) plan.portions = *portions * plan.factor;
}

/// How much heavier each piece is than a tested one; 1 in a recipe without pieces.
inline Rational heavier_pieces(const Recipe& recipe, const ScalePlan& plan) {
  if (!recipe.tested || !plan.piece_weight) return 1;
  return *plan.piece_weight / recipe.tested->weight;
}

/// What the plan puts into vessels and batches, counted as `tested_content` is.
inline Rational planned_content(const Recipe& recipe, const ScalePlan& plan) {
  return plan.pieces ? *plan.pieces : tested_content(recipe) * plan.factor;
}

/// A piece is never parted: one that is heavier than the largest batch is a batch of its own.
inline Filling batches_of(const Recipe& recipe, const Rational& content, const Rational& heavier) {
  const Rational largest = recipe.largest_batch.value_or(1) * tested_content(recipe);
  if (!recipe.tested) return spread_over(content, largest, false);
  return spread_over(content, std::max(largest / heavier, Rational(1)), true);
}

inline void count_batches(const Recipe& recipe, ScalePlan& plan) {
  plan.batches = batches_of(recipe, planned_content(recipe, plan), heavier_pieces(recipe, plan));
  plan.batch_factor = plan.batches.count / batches_of(recipe, tested_content(recipe), 1).count;
}

/// Whether something has to cover the meat.
inline bool is_covered(const Recipe& recipe) {
  return std::any_of(recipe.lines.begin(), recipe.lines.end(),
                     [](const RecipeLine& line) { return line.scale == ScalingRule::by_cover; });
}

/// The room around the meat in all vessels, each with what is in it. Throws Failure where the meat
/// alone fills the fullest.
inline Volume room_in_all(const RecipeVessel& vessel, const Filling& filling, const Volume& piece) {
  Volume out;
  for (const FilledAlike& part : filling.parts) {
    out += room_around(vessel, piece * part.content) * part.times;
  }
  return out;
}

}  // namespace detail

/// The plan made in `vessel` instead of the one the recipe was tested in: as many vessels as its
/// size asks for. What covers the meat follows the volume that is left around it, over the same as
/// tested; where a volume is not known, the factor. Throws Failure where the vessel's size is not
/// known and its content is not said, and where the meat alone fills one and has to be covered.
inline ScalePlan in_vessels(const Recipe& recipe, ScalePlan plan, const RecipeVessel& vessel,
                            const RecipeBook& book) {
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

/// What follows from the factor and the pieces of a plan.
inline ScalePlan finished(const Recipe& recipe, const RecipeBook& book, ScalePlan plan) {
  count_portions(recipe, book, plan);
  count_batches(recipe, plan);
  plan.cover_factor = plan.factor;
  return recipe.vessel ? in_vessels(recipe, std::move(plan), *recipe.vessel, book) : plan;
}

}  // namespace detail

/// `pieces` whole pieces of `weight` each (the tested weight where none is given). The recipe
/// conversion factor is new weight over tested weight. Throws Failure for a recipe that names no
/// pieces, and for counts and weights that are not above 0.
inline ScalePlan plan_for_pieces(const Recipe& recipe, const Rational& pieces,
                                 const RecipeBook& book,
                                 const std::optional<Mass>& weight = std::nullopt) {
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

/// The batch times `factor`. A recipe that cooks whole pieces is made with as many whole pieces as
/// cover it; one that is made in whole batches, with whole batches. Throws Failure for a factor
/// that is not above 0.
inline ScalePlan plan_for_factor(const Recipe& recipe, const Rational& factor,
                                 const RecipeBook& book,
                                 const std::optional<Mass>& weight = std::nullopt) {
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

/// Enough for `portions`, as many as the batch is counted on for. Throws Failure for a recipe that
/// counts none.
inline ScalePlan plan_for_portions(const Recipe& recipe, const Rational& portions,
                                   const RecipeBook& book,
                                   const std::optional<Mass>& weight = std::nullopt) {
  check_positive("a number of portions", portions);
  if (!recipe.makes.portions) throw Failure(problems::recipe_has_no_portions(recipe.name));
  return plan_for_factor(recipe, portions / *counted_portions(recipe, book), book, weight);
}

/// Enough for `portions` portions of another size (as many as the recipe makes where none are
/// named). The recipe conversion factor is new total weight over old total weight: portions x size
/// over the recipe's portions x their size. Throws Failure for a recipe that does not say both, for
/// sizes that do not mix, and for what is not above 0.
inline ScalePlan plan_for_portion_size(const Recipe& recipe, const Amount& portion,
                                       const RecipeBook& book,
                                       const std::optional<Rational>& portions = std::nullopt,
                                       const std::optional<Mass>& weight = std::nullopt) {
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

/// The factor that a line with this rule follows.
inline Rational factor_for(ScalingRule rule, const ScalePlan& plan) {
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
