// SPDX-License-Identifier: MIT
#pragma once
// A tested recipe, as a cook writes it down.

#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/place.hpp"
#include "platewright/quantity/temperature.hpp"
#include "platewright/recipe/scaling_rule.hpp"
#include "platewright/recipe/step_control.hpp"
#include "platewright/recipe/step_needs.hpp"
#include "platewright/recipe/time_growth.hpp"
#include "platewright/recipe/vessel_fill.hpp"
#include "platewright/recipe/written_amount.hpp"
#include "platewright/yield/stage.hpp"

namespace platewright {

/// One line of a recipe as it is written: an ingredient, or another recipe, with an amount. Which
/// of the two the name is, the book says; what a share comes to is worked out when it is asked for.
struct RecipeLine {
  std::string name;
  WrittenAmount amount = {};
  std::string preparation = {};  ///< `finely chopped`
  std::string part = {};         ///< the component it belongs to: `the paste`; may be empty
  ScalingRule scale = ScalingRule::proportional;
  /// Of a line that is held back: the share that is put in at first; the rest goes in to taste.
  Rational start_share = 1;
  /// At which stage the amount is written; the ingredient's usual one where the line does not say.
  std::optional<Stage> stage = {};
  Place place = {};
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
  std::optional<StepControl> control = {};  ///< what kind of step it is, where it says so
  std::optional<TimeGrowth> grows = {};     ///< what `takes` is for, where it is not the whole
  StepNeeds needs = {};                     ///< of people and hobs
};

/// What one cooking of the recipe gives.
struct RecipeYield {
  std::optional<Rational> portions;
  std::optional<Amount> portion;  ///< the size of a portion
  std::optional<Amount> amount;   ///< the whole, for a recipe that others use: `2 qt`
  bool of_whole_dish = false;     ///< the portion holds more than the meat: a stew, a pie
};

/// The whole pieces (roasts, birds, racks) that the recipe was tested on.
struct TestedPieces {
  Rational count;
  std::string piece;  ///< `leg`
  Mass weight;        ///< of one piece, as purchased
};

/// Holds what the cook wrote, and nothing that follows from it: the same recipe means another thing
/// in another book.
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
  std::optional<Length> stands;        ///< how high the loaded vessel is
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
std::optional<Amount> whole_amount(const Recipe& recipe);

/// What a vessel's contents are counted in: `leg`, else `portion`, else `batch`.
std::string content_word(const Recipe& recipe);

/// The temperatures of the oven, in the order of its settings.
std::vector<Temperature> oven_temperatures(const Recipe& recipe);

/// The inside temperature at which the meat comes out of the oven: that of the last step that has
/// one.
std::optional<Temperature> pull_temperature(const Recipe& recipe);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/recipe.hpp"
#endif
