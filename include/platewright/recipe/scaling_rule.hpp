// SPDX-License-Identifier: MIT
#pragma once
// How a line follows the size of the batch.

#include <array>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

enum class ScalingRule {
  proportional,     ///< a share of the whole: follows the factor
  by_surface,       ///< coats the outside: pieces x (weight of a piece / tested weight)^(2/3)
  by_piece,         ///< goes with each roast: number of pieces
  by_pan,           ///< goes with each vessel filled (greasing, deglazing): number of vessels
  by_batch,         ///< goes with each batch that is made: number of batches
  by_cover,         ///< submerges: the volume left around the pieces in the vessel
  held_back,        ///< strong: follows the factor, a share at first and the rest to taste
  spice_on_double,  ///< a published rule for spices: 1 1/2 times on a double
  herb_formula,     ///< a published rule for herbs: half of each multiple past the second
  hot_pepper,       ///< a published rule for hot red pepper: a quarter of each past the second
  fixed,            ///< does not change
};

/// `source` is empty for a rule of geometry or of plain arithmetic.
struct ScalingRuleName {
  ScalingRule rule;
  std::string_view name;
  std::string_view source;
};

inline constexpr std::string_view school_doubling_source =
    "Idaho State Department of Education, doubling a recipe: spices 1 1/2 times, taste, record";
inline constexpr std::string_view spice_association_source =
    "Canadian Spice Association, Spice Usage Ideas and Tips: a starting point, test the batch";

inline constexpr std::array<ScalingRuleName, 11> scaling_rule_names{{
    {ScalingRule::proportional, "in proportion", ""},
    {ScalingRule::by_surface, "by surface", ""},
    {ScalingRule::by_piece, "by piece", ""},
    {ScalingRule::by_pan, "by pan", ""},
    {ScalingRule::by_batch, "by batch", ""},
    {ScalingRule::by_cover, "by cover", ""},
    {ScalingRule::held_back, "held back", ""},
    {ScalingRule::spice_on_double, "spice x 1 1/2", school_doubling_source},
    {ScalingRule::herb_formula, "herb formula", spice_association_source},
    {ScalingRule::hot_pepper, "hot pepper formula", spice_association_source},
    {ScalingRule::fixed, "fixed", ""},
}};

std::string_view name_of(ScalingRule rule);

/// Who publishes the rule; empty where it needs no source.
std::string_view source_of(ScalingRule rule);

/// True for a rule that follows whole roasts, and so needs a recipe that was tested on some.
inline bool follows_pieces(ScalingRule rule) {
  return rule == ScalingRule::by_surface || rule == ScalingRule::by_piece;
}

/// True for a rule that follows the vessel, and so needs a recipe that names one.
inline bool follows_vessel(ScalingRule rule) {
  return rule == ScalingRule::by_pan || rule == ScalingRule::by_cover;
}

/// Throws Failure for a word that is no rule.
ScalingRule scaling_rule_from(std::string_view text);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/scaling_rule.hpp"
#endif
