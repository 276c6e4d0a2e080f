#pragma once
// A tested recipe, as a cook writes it down.

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/place.hpp"
#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/temperature.hpp"
#include "platewright/recipe/scaling_rule.hpp"
#include "platewright/recipe/vessel_fill.hpp"
#include "platewright/yield/stage.hpp"

namespace platewright {

/// An amount written as a share of the weight of other lines: `salt: 6 % of water`, or `2 % of
/// water and meat`, which is another brine.
struct WeightShare {
  Rational share;
  std::vector<std::string> of;  ///< names of lines of the same recipe
};

/// One line of a recipe: an ingredient, or another recipe, with an amount.
struct RecipeLine {
  std::string name;
  LineAmount amount;
  std::string preparation;  ///< `finely chopped`
  std::string part;         ///< the component it belongs to: `the paste`; may be empty
  ScalingRule scale = ScalingRule::proportional;
  /// Of a line that is held back: the share that is put in at first; the rest goes in to taste.
  Rational start_share = 1;
  /// At which stage the amount is written; the ingredient's usual one where the line does not say.
  std::optional<Stage> stage;
  bool is_recipe = false;  ///< the name is that of another recipe of the book
  /// Where the amount is written as a share of other lines; `amount` is then what it comes to in
  /// the tested batch.
  std::optional<WeightShare> share_of = {};
  /// What the amount weighs in the tested batch, for the shares that are taken of it.
  std::optional<Mass> weight = {};
  Place place;
};

/// One setting of the oven: for a time, or until the inside has a temperature, or both.
struct OvenStep {
  Temperature oven = Temperature::celsius(0);
  std::optional<Duration> time;
  std::optional<Temperature> until;
};

/// From the shortest to the longest time that a step takes; the same where it is one time.
struct TimeSpan {
  Duration least;
  Duration most;
};

/// One step of the method. `uses` names lines of the recipe, whose scaled amounts are printed with
/// it.
struct MethodStep {
  std::string text;
  std::vector<std::string> uses;
  std::optional<TimeSpan> takes;
  bool oven = false;  ///< the oven steps, and the rest after them, come here
  Place place;
};

/// What one cooking of the recipe gives.
struct RecipeYield {
  std::optional<Rational> portions;
  std::optional<Amount> portion;  ///< the size of a portion
  std::optional<Amount> amount;   ///< the whole, for a recipe that others use: `2 qt`
  bool of_whole_dish = false;     ///< the portion holds more than the meat: a stew, a pie
  /// What the tested pieces serve by the yield of their cut, in portions of that size, where it is
  /// known; see `count_portions_by_yield`.
  std::optional<Rational> portions_by_yield = {};
};

/// The whole pieces (roasts, birds, racks) that the recipe was tested on.
struct TestedPieces {
  Rational count;
  std::string piece;  ///< `leg`
  Mass weight;        ///< of one piece, as purchased
  /// What one piece takes up in a vessel: its weight by the ingredient's own density. Nothing where
  /// that is not known.
  std::optional<Volume> volume = {};
};

struct Recipe {
  std::string name;
  RecipeYield makes;
  std::optional<TestedPieces> tested;
  std::vector<RecipeLine> lines;
  std::vector<OvenStep> oven;
  std::optional<Duration> rest;
  std::vector<MethodStep> steps;
  std::vector<std::string> notes;
  std::optional<RecipeVessel> vessel;  ///< in which it was tested
  /// The largest batch that is made at once (a mixer's bowl, a kettle), in tested batches.
  std::optional<Rational> largest_batch;
  /// It is made in whole tested batches alone (one packet, one can, one leaf of pastry).
  bool whole_batches = false;
  /// The share of what it makes that never reaches the recipe that uses it: what stays in the pot,
  /// the tasting spoon, a strainer.
  Rational lost = 0;
  Place place;
};

/// What the whole recipe makes, in the unit of `makes: 2 qt`, or of portions times their size;
/// nothing where the recipe says neither.
inline std::optional<Amount> whole_amount(const Recipe& recipe) {
  if (recipe.makes.amount) return recipe.makes.amount;
  if (recipe.makes.portions && recipe.makes.portion) {
    return scaled(*recipe.makes.portion, *recipe.makes.portions);
  }
  return std::nullopt;
}

/// The portions that one tested batch is counted on for: those the recipe names or, where they are
/// fewer, those that its meat serves by the yield of the cut, so that no guest goes short.
inline std::optional<Rational> counted_portions(const Recipe& recipe) {
  const std::optional<Rational>& by_yield = recipe.makes.portions_by_yield;
  if (!recipe.makes.portions || !by_yield) return recipe.makes.portions;
  return std::min(*recipe.makes.portions, *by_yield);
}

/// What a vessel's contents are counted in: `leg`, else `portion`, else `batch`.
inline std::string content_word(const Recipe& recipe) {
  if (recipe.tested) return recipe.tested->piece;
  return recipe.makes.portions ? "portion" : "batch";
}

/// The temperatures of the oven, in the order of its settings.
inline std::vector<Temperature> oven_temperatures(const Recipe& recipe) {
  std::vector<Temperature> out;
  for (const OvenStep& step : recipe.oven) out.push_back(step.oven);
  return out;
}

/// The inside temperature at which the meat comes out of the oven: that of the last step that has
/// one.
inline std::optional<Temperature> pull_temperature(const Recipe& recipe) {
  std::optional<Temperature> out;
  for (const OvenStep& step : recipe.oven) {
    if (step.until) out = step.until;
  }
  return out;
}

}  // namespace platewright
