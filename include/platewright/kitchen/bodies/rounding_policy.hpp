// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/rounding_policy.hpp.

#include <string>

#include "platewright/kitchen/rounding_policy.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view policy_name(KitchenPolicy policy) {
  switch (policy) {
    case KitchenPolicy::exact:
      return "exact";
    case KitchenPolicy::army_card:
      return "army card";
    case KitchenPolicy::usda_schools:
      return "usda schools";
    case KitchenPolicy::nearest_step:
      return "nearest step";
  }
  return "";
}

namespace detail {

PLATEWRIGHT_BODY KitchenSteps one_step(const Rational& step, std::string_view unit) {
  if (step <= 0) {
    throw Failure(
        problems::number_not_positive("a rounding step", as_exact(step) + " " + std::string(unit)));
  }
  return {{{0, step}}};
}

}  // namespace detail

PLATEWRIGHT_BODY KitchenSteps usda_schools_weights() {
  const Rational ounce = detail::grams(1, units::ounce);
  return {{{0, ounce / 4}, {ounce * 10, ounce / 2}, {ounce * 40, ounce}, {ounce * 80, ounce * 4}}};
}

PLATEWRIGHT_BODY KitchenSteps usda_schools_measures() {
  const Rational teaspoon = detail::millilitres(1, units::us_teaspoon);
  const Rational tablespoon = teaspoon * 3;
  const Rational cup = tablespoon * 16;
  const Rational quart = cup * 4;
  const Rational gallon = quart * 4;
  return {{{0, teaspoon / 8},
           {tablespoon, teaspoon / 4},
           {tablespoon * 3, teaspoon / 2},
           {cup / 2, teaspoon},
           {cup * 3 / 4, tablespoon},
           {cup * 2, cup / 4},
           {quart * 2, cup / 2},
           {gallon, cup},
           {gallon * 2, quart},
           {gallon * 10, gallon / 2},
           {gallon * 20, gallon}}};
}

PLATEWRIGHT_BODY KitchenSteps weight_steps(KitchenPolicy policy, const Mass& step) {
  switch (policy) {
    case KitchenPolicy::exact:
      return {};
    case KitchenPolicy::army_card:
      return army_card_weights();
    case KitchenPolicy::usda_schools:
      return usda_schools_weights();
    case KitchenPolicy::nearest_step:
      return detail::one_step(step.in(units::gram), "g");
  }
  return {};
}

PLATEWRIGHT_BODY KitchenSteps measure_steps(KitchenPolicy policy, const Volume& step) {
  switch (policy) {
    case KitchenPolicy::exact:
      return {};
    case KitchenPolicy::army_card:
      return army_card_measures();
    case KitchenPolicy::usda_schools:
      return usda_schools_measures();
    case KitchenPolicy::nearest_step:
      return detail::one_step(step.in(units::millilitre), "mL");
  }
  return {};
}

}  // namespace platewright
