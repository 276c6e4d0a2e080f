// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/kitchens.hpp.

#include <utility>

#include "platewright/problem/catalogue/kitchens.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem kitchen_measure_unusable(std::string_view unit, std::string why) {
  return make_problem(
      "kitchen-measure-unusable",
      "the measure " + in_quotes(unit) + " of the kitchen (" + std::move(why) + ")",
      "a measure that something can be measured with",
      "name the smallest and the largest number, the step and the marks between, as "
      "in cups from 1/4 to 3 3/4 by 1 with quarters");
}

PLATEWRIGHT_BODY Problem kitchen_empty() {
  return make_problem("kitchen-empty", "a kitchen without measures", "one measure at least",
                      "name what the kitchen owns, or leave it out to take what is usual");
}

PLATEWRIGHT_BODY Problem kitchen_entry_malformed(std::string_view text) {
  return make_problem("kitchen-entry-malformed", in_quotes(text),
                      "a spoon or cup such as 1/4 tsp, or a jug such as 100-1000 mL by 50 mL",
                      "write what is marked on it");
}

PLATEWRIGHT_BODY Problem rounding_unknown(std::string_view text,
                                          const std::vector<std::string>& known) {
  std::string remedy = did_you_mean(text, known);
  if (remedy.empty())
    remedy = "write one of these; a step for weights, one for capacities, or both";
  return make_problem("rounding-unknown", "the rounding " + in_quotes(text),
                      "fewest measures, exact, army card, usda schools, nearest 5 g, or nearest "
                      "1/4 oz and 1/2 tsp",
                      std::move(remedy));
}

PLATEWRIGHT_BODY Problem rounding_other_system(std::string_view policy, std::string_view system) {
  return make_problem(
      "rounding-other-system",
      "the rounding " + in_quotes(policy) + " for " + std::string(system) + " measures",
      "US measures, which that table is made for",
      "write `measures: us`, or choose another rounding");
}

}  // namespace platewright::problems
