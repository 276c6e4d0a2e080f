// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/rounding.hpp.

#include "platewright/kitchen/rounding.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY KitchenChain measure_chain(MeasuringSystem system, const UnitTable& table) {
  if (system == MeasuringSystem::us) return gallons_to_teaspoons(table);
  if (system == MeasuringSystem::imperial) return imperial_gallons_to_fluid_ounces(table);
  return litres_and_millilitres(table);
}

/// `nearest 5 g`, `nearest 1/4 oz and 1/2 tsp`: a step for weights, one for capacities, or both.
PLATEWRIGHT_BODY KitchenRounding nearest_steps(std::string_view text, std::string_view steps,
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

PLATEWRIGHT_BODY KitchenRounding rounding_by(KitchenPolicy policy, MeasuringSystem system,
                                             const UnitTable& table) {
  if (policy != KitchenPolicy::exact && system != MeasuringSystem::us) {
    throw Failure(problems::rounding_other_system(policy_name(policy), system_name(system)));
  }
  return {std::string(policy_name(policy)), policy,
          KitchenRule{weight_steps(policy), detail::weight_chain(system, table)},
          KitchenRule{measure_steps(policy), detail::measure_chain(system, table)}};
}

PLATEWRIGHT_BODY KitchenRounding read_rounding(std::string_view text, MeasuringSystem system,
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

PLATEWRIGHT_BODY std::string rounding_text(const KitchenRounding& rounding) {
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
