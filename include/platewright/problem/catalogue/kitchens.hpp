#pragma once
// What can be wrong with the measures that a kitchen is said to own.

#include <string>
#include <string_view>
#include <utility>

#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

inline Problem kitchen_measure_unusable(std::string_view unit, std::string why) {
  return make_problem(
      "kitchen-measure-unusable",
      "the measure " + in_quotes(unit) + " of the kitchen (" + std::move(why) + ")",
      "a measure that something can be measured with",
      "name the smallest and the largest number, the step and the marks between, as "
      "in cups from 1/4 to 3 3/4 by 1 with quarters");
}

inline Problem kitchen_empty() {
  return make_problem("kitchen-empty", "a kitchen without measures", "one measure at least",
                      "name what the kitchen owns, or leave it out to take what is usual");
}

}  // namespace platewright::problems
