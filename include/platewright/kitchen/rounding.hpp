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

inline KitchenChain measure_chain(MeasuringSystem system, const UnitTable& table) {
  if (system == MeasuringSystem::us) return gallons_to_teaspoons(table);
  if (system == MeasuringSystem::imperial) return imperial_gallons_to_fluid_ounces(table);
  return litres_and_millilitres(table);
}

/// Steps in metric units are written in metric units, whatever the kitchen's own.
inline MeasuringSystem system_of_step(const Unit& unit, MeasuringSystem kitchen) {
  return unit.record().system == MeasuringSystem::metric ? MeasuringSystem::metric : kitchen;
}

/// `nearest 5 g`, `nearest 1/4 oz and 1/2 tsp`: a step for weights, one for capacities, or both.
inline KitchenRounding nearest_steps(std::string_view text, std::string_view steps,
                                     MeasuringSystem system, const UnitTable& table) {
  KitchenRounding out;
  out.name = text;
  out.policy = KitchenPolicy::nearest_step;
  while (!steps.empty()) {
    const std::size_t next = steps.find(" and ");
    const Amount step = read_amount(steps.substr(0, next), table, system);
    steps = next == std::string_view::npos ? std::string_view{} : steps.substr(next + 5);
    const MeasuringSystem written = system_of_step(step.unit, system);
    if (step.dimension() == UnitDimension::volume && !out.measures) {
      out.measures = KitchenRule{measure_steps(KitchenPolicy::nearest_step, to_volume(step)),
                                 measure_chain(written, table)};
    } else if (!out.weights) {
      out.weights = KitchenRule{weight_steps(KitchenPolicy::nearest_step, to_mass(step)),
                                weight_chain(written, table)};
    } else {
      throw Failure(problems::rounding_unknown(text, {}));
    }
  }
  return out;
}

}  // namespace detail

/// A published table, or none at all. Throws Failure for a table of US measures in a kitchen of
/// another measuring system.
inline KitchenRounding rounding_by(KitchenPolicy policy, MeasuringSystem system,
                                   const UnitTable& table) {
  if (policy != KitchenPolicy::exact && system != MeasuringSystem::us) {
    throw Failure(problems::rounding_other_system(policy_name(policy), system_name(system)));
  }
  return {std::string(policy_name(policy)), policy,
          KitchenRule{weight_steps(policy), detail::weight_chain(system, table)},
          KitchenRule{measure_steps(policy), detail::measure_chain(system, table)}};
}

/// Reads `fewest measures`, `exact`, `army card`, `usda schools`, `nearest 5 g` or `nearest 1/4 oz
/// and 1/2 tsp`. Throws Failure for other words, and as `rounding_by` does.
inline KitchenRounding read_rounding(std::string_view text, MeasuringSystem system,
                                     const UnitTable& table) {
  const std::string plain = folded_name(text);
  if (plain == KitchenRounding{}.name) return {};
  for (const KitchenPolicy policy :
       {KitchenPolicy::exact, KitchenPolicy::army_card, KitchenPolicy::usda_schools}) {
    if (plain == policy_name(policy)) return rounding_by(policy, system, table);
  }
  constexpr std::string_view nearest = "nearest ";
  if (text.substr(0, nearest.size()) == nearest) {
    return detail::nearest_steps(text, text.substr(nearest.size()), system, table);
  }
  throw Failure(problems::rounding_unknown(
      text, {"fewest measures", "exact", "army card", "usda schools", "nearest 5 g"}));
}

/// The rule as a sheet says it, with the source of a published table.
inline std::string rounding_text(const KitchenRounding& rounding) {
  if (rounding.policy == KitchenPolicy::exact) return "not rounded";
  if (rounding.policy == KitchenPolicy::army_card) {
    return "rounded by card A-1 of the Armed Forces Recipe Service (TM 10-412, 2003)";
  }
  if (rounding.policy == KitchenPolicy::usda_schools) {
    return "rounded by the guide for school kitchens (USDA)";
  }
  return rounding.policy ? "rounded to the " + rounding.name : rounding.name;
}

}  // namespace platewright
