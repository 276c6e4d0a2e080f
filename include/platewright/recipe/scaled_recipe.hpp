#pragma once
// A recipe at the size that is wanted.

#include <algorithm>
#include <optional>
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

/// The factor of a line that is a share of others: their new weight over their tested weight.
inline Rational share_factor(const WeightShare& share, const std::vector<ScaledLine>& lines) {
  Mass before;
  Mass after;
  for (const ScaledLine& other : lines) {
    if (!other.line->weight || other.line->share_of) continue;
    if (std::find(share.of.begin(), share.of.end(), other.line->name) == share.of.end()) continue;
    before += *other.line->weight;
    after += *other.line->weight * other.factor;
  }
  return before > Mass() ? after / before : Rational(1);
}

inline void set_factor(ScaledLine& line, const Rational& factor) {
  line.factor = factor;
  line.amount = scaled(line.line->amount, factor);
  line.start = scaled(line.amount, line.line->start_share);
}

}  // namespace detail

/// Every line by its own rule; one that is a share of other lines follows their weight. Throws
/// Failure for a line that follows pieces or a vessel in a recipe that names none.
inline ScaledRecipe scale(const Recipe& recipe, ScalePlan plan) {
  ScaledRecipe out;
  out.recipe = &recipe;
  out.plan = std::move(plan);
  for (const RecipeLine& line : recipe.lines) {
    check_scaling_rule(line, recipe, out.plan.vessel.has_value());
    ScaledLine scaled_line;
    scaled_line.line = &line;
    detail::set_factor(scaled_line, factor_for(line.scale, out.plan));
    out.lines.push_back(std::move(scaled_line));
  }
  for (ScaledLine& line : out.lines) {
    if (line.line->share_of) {
      detail::set_factor(line, detail::share_factor(*line.line->share_of, out.lines));
    }
  }
  return out;
}

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
  return amount.high ? amount.high : amount.low;
}

}  // namespace platewright
