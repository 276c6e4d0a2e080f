// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/recipe.hpp.

#include "platewright/recipe/recipe.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Amount> whole_amount(const Recipe& recipe) {
  if (recipe.makes.amount) return recipe.makes.amount;
  if (recipe.makes.portions && recipe.makes.portion) {
    return scaled(*recipe.makes.portion, *recipe.makes.portions);
  }
  return std::nullopt;
}

PLATEWRIGHT_BODY std::string content_word(const Recipe& recipe) {
  if (recipe.tested) return recipe.tested->piece;
  return recipe.makes.portions ? "portion" : "batch";
}

PLATEWRIGHT_BODY std::vector<Temperature> oven_temperatures(const Recipe& recipe) {
  std::vector<Temperature> out;
  for (const OvenStep& step : recipe.oven) out.push_back(step.oven);
  return out;
}

PLATEWRIGHT_BODY std::optional<Temperature> pull_temperature(const Recipe& recipe) {
  std::optional<Temperature> out;
  for (const OvenStep& step : recipe.oven) {
    if (step.until) out = step.until;
  }
  return out;
}

}  // namespace platewright
