// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/safety.hpp.

#include <utility>

#include "platewright/problem/catalogue/safety.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem safety_not_stated(const std::vector<std::string>& ingredients) {
  return make_problem("safety-not-stated",
                      "a temperature inside, and no word on what kind of food " +
                          detail::one_of(ingredients) + " is",
                      "`safety: poultry`, `whole cut`, `ground`, `fish` or `eggs` for what comes "
                      "from an animal, and `safety: none` for the rest",
                      "write it in the larder; until then the card says that the minimum "
                      "temperature is not known");
}

PLATEWRIGHT_BODY Problem inside_temperature_impossible(std::string_view text) {
  return make_problem("inside-temperature", in_quotes(text),
                      "a temperature inside from 32 F to 212 F (0 C to 100 C)",
                      "correct the temperature or its scale");
}

PLATEWRIGHT_BODY Problem inside_above_oven(std::string_view text) {
  return make_problem(
      "inside-above-oven", in_quotes(text),
      "a temperature inside that is not above the oven's, which the food can't pass",
      "correct one of the two");
}

PLATEWRIGHT_BODY Problem oven_temperature_unusual(std::string_view text) {
  return make_problem("oven-temperature-unusual", in_quotes(text),
                      "an oven from 100 F to 600 F (38 C to 316 C)",
                      "correct the temperature or its scale, if it is not meant");
}

PLATEWRIGHT_BODY Problem rest_too_long(std::string_view text, std::string_view most,
                                       std::string_view source) {
  return make_problem("rest-too-long", "a rest of " + in_quotes(text),
                      "a rest of " + std::string(most) + " at most (" + std::string(source) + ")",
                      "correct the time or its unit; food that waits longer is kept at 135 F or "
                      "above, or cooled to 41 F or below");
}

PLATEWRIGHT_BODY Problem below_the_minimum(std::string_view recipe, std::string_view food,
                                           std::string_view pull, std::string_view minimum,
                                           std::string remedy) {
  return make_problem("below-the-minimum",
                      in_quotes(recipe) + " is taken out at " + std::string(pull) +
                          " inside, with " + std::string(food) + " in it",
                      std::string(minimum) + " or more inside", std::move(remedy));
}

PLATEWRIGHT_BODY Problem stands_too_long(std::string_view recipe, std::string_view longest,
                                         std::string_view most, std::string_view source) {
  return make_problem("stands-too-long",
                      in_quotes(recipe) + " stands up to " + std::string(longest) +
                          " between the oven and the serving",
                      std::string(most) +
                          " at most between 41 F and 135 F (5 C and 57 C), by a "
                          "written plan (" +
                          std::string(source) + ")",
                      "cook it later, keep it at 135 F or above, or cool and reheat it; local "
                      "codes come first");
}

}  // namespace platewright::problems
