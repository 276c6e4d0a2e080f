// SPDX-License-Identifier: MIT
#pragma once
// The tables that are built into the program.

#include <string>
#include <vector>

#include "platewright/heat/lethality.hpp"
#include "platewright/quantity/ingredient_weights.hpp"
#include "platewright/quantity/unit_table.hpp"
#include "platewright/safety/allergens.hpp"
#include "platewright/safety/safety_table.hpp"
#include "platewright/yield/yield_table.hpp"

namespace platewright {

/// A vessel or a tool that measures: what its source prints, and what it holds by a rule.
struct Vessel {
  std::string name;
  std::string kind;
  std::vector<std::string> names;
  std::string printed;   ///< as the source prints it: `1/2 cup`; may be empty
  std::string by_rule;   ///< by the rule of its kind: `1/8 quart`; may be empty
  std::string capacity;  ///< level, contents, water capacity, usable or brimful
  std::string outside;   ///< outside dimensions of a pan
  std::string source;
  std::string note;
};

enum class PublishedTimeKind { roasting, thawing, carry_over };

inline std::string_view name_of(PublishedTimeKind kind) {
  switch (kind) {
    case PublishedTimeKind::roasting:
      return "roasting";
    case PublishedTimeKind::thawing:
      return "thawing";
    case PublishedTimeKind::carry_over:
      return "carry-over";
  }
  return {};
}

/// A time of roasting, thawing or carry-over, as its source prints it: to be shown beside a cook's
/// own timed roast, not to be calculated with.
struct PublishedTime {
  PublishedTimeKind kind = PublishedTimeKind::roasting;
  std::string of;  ///< the cut or the food
  std::string weight;
  std::string at;  ///< the oven, the place, or the temperature at which it leaves the oven
  std::string time;
  std::string end;  ///< what is reached
  std::string source;
  std::string row;
  std::string note;
};

/// Units, weights, yields, temperatures and allergens, each row with its source.
struct Tables {
  UnitTable units;
  WeightTable weights;
  YieldTable yields;
  SafetyTable safety;
  AllergenTable allergens;
  std::vector<Vessel> vessels;
  std::vector<PublishedTime> times;
  std::vector<LethalityStandard> lethality;
};

/// Every name that a vessel of the table has.
std::vector<std::string> vessel_names(const Tables& tables);

/// The tables of `units-data/` and `yields/`. Nothing is read from a file: the rows are part of the
/// program.
Tables built_in_tables();

/// The built-in yield rows alone, for whoever puts rows of their own on top.
YieldRows built_in_yields();

}  // namespace platewright
