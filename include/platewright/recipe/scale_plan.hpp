// SPDX-License-Identifier: MIT
#pragma once
// From one tested batch to the batch that is wanted.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
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

/// How much heavier each piece is than a tested one; 1 in a recipe without pieces.
Rational heavier_pieces(const Recipe& recipe, const ScalePlan& plan);

/// A piece is never parted: one that is heavier than the largest batch is a batch of its own.
Filling batches_of(const Recipe& recipe, const Rational& content, const Rational& heavier);

/// The room around the meat in all vessels, each with what is in it. Throws Failure where the meat
/// alone fills the fullest.
Volume room_in_all(const RecipeVessel& vessel, const Filling& filling, const Volume& piece);

}  // namespace detail

/// The plan made in `vessel` instead of the one the recipe was tested in: as many vessels as its
/// size asks for. What covers the meat follows the volume that is left around it, over the same as
/// tested; where a volume is not known, the factor. Throws Failure where the vessel's size is not
/// known and its content is not said, and where the meat alone fills one and has to be covered.
ScalePlan in_vessels(const Recipe& recipe, ScalePlan plan, const RecipeVessel& vessel,
                     const RecipeBook& book);

namespace detail {

/// What follows from the factor and the pieces of a plan.
ScalePlan finished(const Recipe& recipe, const RecipeBook& book, ScalePlan plan);

}  // namespace detail

/// `pieces` whole pieces of `weight` each (the tested weight where none is given). The recipe
/// conversion factor is new weight over tested weight. Throws Failure for a recipe that names no
/// pieces, and for counts and weights that are not above 0.
ScalePlan plan_for_pieces(const Recipe& recipe, const Rational& pieces, const RecipeBook& book,
                          const std::optional<Mass>& weight = std::nullopt);

/// The batch times `factor`. A recipe that cooks whole pieces is made with as many whole pieces as
/// cover it; one that is made in whole batches, with whole batches. Throws Failure for a factor
/// that is not above 0.
ScalePlan plan_for_factor(const Recipe& recipe, const Rational& factor, const RecipeBook& book,
                          const std::optional<Mass>& weight = std::nullopt);

/// Enough for `portions`, as many as the batch is counted on for. Throws Failure for a recipe that
/// counts none.
ScalePlan plan_for_portions(const Recipe& recipe, const Rational& portions, const RecipeBook& book,
                            const std::optional<Mass>& weight = std::nullopt);

/// Enough for `portions` portions of another size (as many as the recipe makes where none are
/// named). The recipe conversion factor is new total weight over old total weight: portions x size
/// over the recipe's portions x their size. Throws Failure for a recipe that does not say both, for
/// sizes that do not mix, and for what is not above 0.
ScalePlan plan_for_portion_size(const Recipe& recipe, const Amount& portion, const RecipeBook& book,
                                const std::optional<Rational>& portions = std::nullopt,
                                const std::optional<Mass>& weight = std::nullopt);

/// The factor that a line with this rule follows.
Rational factor_for(ScalingRule rule, const ScalePlan& plan);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/scale_plan.hpp"
#endif
