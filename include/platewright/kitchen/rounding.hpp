// SPDX-License-Identifier: MIT
#pragma once
// By which rule the amounts of a kitchen's cards are rounded: by a published table, to a step, or
// not.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/kitchen/rounding_policy.hpp"
#include "platewright/kitchen/rounding_rule.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/kitchens.hpp"
#include "platewright/quantity/read_amount.hpp"

namespace platewright {

/// A rounding rule as the user chose it. Where it says nothing of weights they are what the scale
/// shows; where it says nothing of capacities the fewest measures within the tolerance are taken.
struct KitchenRounding {
  std::string name = "fewest measures";  ///< as it is typed
  std::optional<KitchenPolicy> policy;   ///< the published table, if it is one
  std::optional<KitchenRule> weights;
  std::optional<KitchenRule> measures;

  friend bool operator==(const KitchenRounding&, const KitchenRounding&) = default;
};

namespace detail {

inline bool counts_in_ounces(MeasuringSystem system) {
  return system == MeasuringSystem::us || system == MeasuringSystem::imperial;
}

inline KitchenChain weight_chain(MeasuringSystem system, const UnitTable& table) {
  return counts_in_ounces(system) ? pounds_and_ounces(table) : grams_and_kilograms(table);
}

/// Steps in metric units are written in metric units, whatever the kitchen's own.
inline MeasuringSystem system_of_step(const Unit& unit, MeasuringSystem kitchen) {
  return unit.record().system == MeasuringSystem::metric ? MeasuringSystem::metric : kitchen;
}

}  // namespace detail

/// A published table, or none at all. Throws Failure for a table of US measures in a kitchen of
/// another measuring system.
KitchenRounding rounding_by(KitchenPolicy policy, MeasuringSystem system, const UnitTable& table);

/// Reads `fewest measures`, `exact`, `army card`, `usda schools`, `nearest 5 g` or `nearest 1/4 oz
/// and 1/2 tsp`. Throws Failure for other words, and as `rounding_by` does.
KitchenRounding read_rounding(std::string_view text, MeasuringSystem system,
                              const UnitTable& table);

/// The rule as a sheet says it, with the source of a published table.
std::string rounding_text(const KitchenRounding& rounding);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/rounding.hpp"
#endif
