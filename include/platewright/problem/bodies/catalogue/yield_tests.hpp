// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/yield_tests.hpp.

#include <string>

#include "platewright/problem/catalogue/yield_tests.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem parts_above_whole(std::string_view parts, std::string_view whole,
                                           std::string_view difference) {
  return make_problem("parts-above-whole",
                      "parts of " + std::string(parts) + " in a whole of " + std::string(whole) +
                          ", " + std::string(difference) + " too much",
                      "parts that add up to the whole exactly",
                      "weigh the parts again, or correct the weight of the whole");
}

PLATEWRIGHT_BODY Problem parts_unaccounted(std::string_view parts, std::string_view whole,
                                           std::string_view difference) {
  return make_problem("parts-unaccounted",
                      "parts of " + std::string(parts) + " in a whole of " + std::string(whole) +
                          ", " + std::string(difference) + " not accounted for",
                      "parts that add up to the whole exactly",
                      "add the part that is missing, or say that the rest is cutting loss");
}

PLATEWRIGHT_BODY Problem part_weight_missing(std::string_view part) {
  return make_problem("part-weight-missing", "no weight for " + in_quotes(part),
                      "a weight for every part but one usable part or cutting loss",
                      "weigh the part; only one usable part or cutting loss can be the rest");
}

PLATEWRIGHT_BODY Problem part_value_not_credited(std::string_view part) {
  return make_problem("part-value-not-credited", "a value for " + in_quotes(part),
                      "values for by-products only",
                      "make the part a by-product, or take its value out");
}

PLATEWRIGHT_BODY Problem usable_part_missing(std::string_view cut) {
  return make_problem("usable-part-missing", "no usable weight in the test of " + in_quotes(cut),
                      "a usable part above 0", "add the part that goes on to be cooked or served");
}

PLATEWRIGHT_BODY Problem credits_above_cost(std::string_view credits, std::string_view cost) {
  return make_problem(
      "credits-above-cost",
      "by-products worth " + std::string(credits) + " against a cost of " + std::string(cost),
      "credits below the cost", "check the values of the by-products");
}

PLATEWRIGHT_BODY Problem trials_missing() {
  return make_problem("trials-missing", "no trial", "one trial or more",
                      "add the weights of a trial");
}

PLATEWRIGHT_BODY Problem spread_too_wide(std::string_view what) {
  return make_problem("spread-too-wide", std::string(what) + " is as large as half of its average",
                      "a spread that a normal distribution can stand for",
                      "check the standard deviation, or plan from the lowest figure instead");
}

}  // namespace platewright::problems
