// SPDX-License-Identifier: MIT
#pragma once
// Minimum temperatures, holds and limits, as the authorities print them.

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/folded_name.hpp"
#include "platewright/quantity/temperature.hpp"
#include "platewright/safety/bound_temperature.hpp"
#include "platewright/safety/food_kind.hpp"
#include "platewright/safety/step_rule.hpp"
#include "platewright/safety/thawing_rate.hpp"
#include "platewright/safety/undercooked.hpp"

namespace platewright {

/// For whom an authority speaks.
enum class Audience { consumer, food_service };

std::string_view name_of(Audience audience);

/// Throws Failure for a word that is none.
Audience audience_from(std::string_view text);

/// What one authority asks of one kind of food. A lower figure of one never replaces another's.
struct MinimumTemperature {
  std::string product;
  FoodKind kind;  ///< what a cut names
  std::string authority;
  Audience audience = Audience::consumer;
  Temperature at = Temperature::celsius(0);
  std::optional<Duration> rest;  ///< after cooking, before it is carved
  std::optional<Duration> hold;  ///< at this temperature or above
  std::string source;
  std::string row;
  std::string note;
};

/// A row of the step table for whole meat roasts: kept at `at` or above for `hold`.
struct RoastHold {
  Temperature at = Temperature::celsius(0);
  Duration hold;
  std::string authority;
  std::string row;
};

/// A limit of holding, cooling, reheating and the like.
struct SafetyLimit {
  std::string limit;
  std::string key;
  std::optional<BoundTemperature> temperature;
  std::optional<Duration> within;
  std::string source;
  std::string row;
  std::string note;
};

/// Holds what it was given and has no rows of its own.
struct SafetyTable {
  std::vector<MinimumTemperature> minimums;
  std::vector<RoastHold> roast_holds;
  std::vector<SafetyLimit> limits;
  std::vector<UndercookedKind> undercooked_kinds;
  std::vector<StepRule> step_rules = {};
  std::vector<ThawingRate> thawing_rates = {};

  /// What each authority asks for this kind of food, in the order of the table.
  std::vector<MinimumTemperature> minimums_for(const FoodKind& kind) const;

  /// The kinds of food that have a minimum, in the order of the table.
  std::vector<FoodKind> kinds() const;

  /// What may be done where this kind of food stays below its minimum: any that has no row is
  /// cooked on.
  Undercooked undercooked(const FoodKind& kind) const;

  /// The kind of food called so, or `none`; capitals do not matter. Throws Failure with the nearest
  /// kinds: a word that no row has would take every minimum off the card.
  FoodKind kind_called(std::string_view text) const;

  /// The step table's row for a temperature: between two rows the lower temperature with its longer
  /// time; nothing below the table.
  std::optional<RoastHold> roast_hold_at(const Temperature& temperature) const;

  std::optional<SafetyLimit> limit(std::string_view key) const;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/safety_table.hpp"
#endif
