#pragma once
// What can be wrong with the terms of a quote as they are written.

#include <string>
#include <string_view>

#include "platewright/problem/problem.hpp"

namespace platewright::problems {

inline Problem pricing_rules_count(int found) {
  return make_problem(
      "pricing-rules", std::to_string(found) + " pricing rules",
      "one of margin, mark-up and food cost",
      "a margin is a share of the price, a mark-up a share of the cost, a food cost "
      "compares the food with the price: keep the one you mean");
}

inline Problem quote_terms_missing(std::string_view event) {
  return make_problem("quote-terms-missing", std::string(event) + " has no terms to quote by",
                      "a `quote` with one pricing rule", "add it to the event's file");
}

}  // namespace platewright::problems
