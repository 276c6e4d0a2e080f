#pragma once
// From one tested batch to the batch that is wanted.

#include <optional>
#include <string>

#include "platewright/number/round.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/recipe/power.hpp"
#include "platewright/recipe/recipe.hpp"

namespace platewright {

/// The factors that the lines of one batch follow. None of them is rounded; where the recipe cooks
/// whole pieces, the number of pieces is, and every factor follows from the pieces that are cooked.
struct ScalePlan {
  Rational asked = 1;             ///< recipe conversion factor as asked for: new yield / old yield
  Rational factor = 1;            ///< recipe conversion factor as made
  Rational piece_factor = 1;      ///< pieces / tested pieces
  Rational surface_factor = 1;    ///< pieces / tested pieces x (weight / tested weight)^(2/3)
  std::optional<Rational> pieces; ///< whole pieces that are cooked
  std::optional<Mass> piece_weight;
  std::optional<Rational> portions;  ///< what is made, if the recipe counts portions
  bool rounded_up = false;           ///< a part of a piece was asked for
};

namespace detail {

inline void expect_above_zero(std::string_view what, const Rational& value) {
  if (value <= 0) throw Failure(problems::number_not_positive(what, as_mixed(value)));
}

inline const TestedPieces& need_pieces(const Recipe& recipe) {
  if (!recipe.tested) throw Failure(problems::recipe_has_no_pieces(recipe.name));
  return *recipe.tested;
}

inline void count_portions(const Recipe& recipe, ScalePlan& plan) {
  if (recipe.makes.portions) plan.portions = *recipe.makes.portions * plan.factor;
}

}  // namespace detail

/// `pieces` whole pieces of `weight` each (the tested weight where none is given). The recipe
/// conversion factor is new weight over tested weight. Throws Failure for a recipe that names no
/// pieces, and for counts and weights that are not above 0.
inline ScalePlan plan_for_pieces(const Recipe& recipe, const Rational& pieces,
                                 const std::optional<Mass>& weight = std::nullopt) {
  const TestedPieces& tested = detail::need_pieces(recipe);
  detail::expect_above_zero("a number of pieces", pieces);
  ScalePlan plan;
  plan.pieces = up_to(pieces, 1);
  plan.rounded_up = *plan.pieces != pieces;
  plan.piece_weight = weight.value_or(tested.weight);
  if (*plan.piece_weight <= Mass()) {
    throw Failure(problems::number_not_positive("a weight of a piece", "0"));
  }
  const Rational heavier = *plan.piece_weight / tested.weight;
  plan.asked = pieces * heavier / tested.count;
  plan.piece_factor = *plan.pieces / tested.count;
  plan.factor = plan.piece_factor * heavier;
  plan.surface_factor = plan.piece_factor * two_thirds_power(heavier);
  detail::count_portions(recipe, plan);
  return plan;
}

/// The batch times `factor`. A recipe that cooks whole pieces is made with as many whole pieces as
/// cover it. Throws Failure for a factor that is not above 0.
inline ScalePlan plan_for_factor(const Recipe& recipe, const Rational& factor,
                                 const std::optional<Mass>& weight = std::nullopt) {
  detail::expect_above_zero("a factor", factor);
  if (recipe.tested) {
    const Rational heavier = weight ? *weight / recipe.tested->weight : Rational(1);
    return plan_for_pieces(recipe, factor * recipe.tested->count / heavier, weight);
  }
  ScalePlan plan;
  plan.asked = plan.factor = plan.piece_factor = plan.surface_factor = factor;
  detail::count_portions(recipe, plan);
  return plan;
}

/// Enough for `portions`. Throws Failure for a recipe that counts none.
inline ScalePlan plan_for_portions(const Recipe& recipe, const Rational& portions,
                                   const std::optional<Mass>& weight = std::nullopt) {
  detail::expect_above_zero("a number of portions", portions);
  if (!recipe.makes.portions) throw Failure(problems::recipe_has_no_portions(recipe.name));
  return plan_for_factor(recipe, portions / *recipe.makes.portions, weight);
}

/// As much as a weight on hand of the main ingredient (the recipe's first line) gives; nothing is
/// rounded, since the meat is there. Throws Failure where that line is not a weight.
inline ScalePlan plan_for_weight_on_hand(const Recipe& recipe, const Mass& on_hand) {
  detail::expect_above_zero("a weight on hand", on_hand.in(units::gram));
  if (recipe.lines.empty() || recipe.lines.front().amount.to_taste()) {
    throw Failure(problems::scale_missing_factor());
  }
  const Mass written = to_mass(*recipe.lines.front().amount.low);
  ScalePlan plan;
  plan.asked = plan.factor = plan.piece_factor = plan.surface_factor = on_hand / written;
  if (recipe.tested) {
    plan.pieces = plan.factor * recipe.tested->count;
    plan.piece_weight = recipe.tested->weight;
  }
  detail::count_portions(recipe, plan);
  return plan;
}

/// The factor that a line with this rule follows.
inline const Rational& factor_for(ScalingRule rule, const ScalePlan& plan) {
  static const Rational one = 1;
  switch (rule) {
    case ScalingRule::by_surface:
      return plan.surface_factor;
    case ScalingRule::by_piece:
      return plan.piece_factor;
    case ScalingRule::fixed:
      return one;
    case ScalingRule::proportional:
    case ScalingRule::held_back:
      break;
  }
  return plan.factor;
}

}  // namespace platewright
