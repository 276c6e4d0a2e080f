// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/recipe_builders.hpp.

#include "platewright/recipe/recipe_builders.hpp"

namespace platewright::builders {

PLATEWRIGHT_BODY const UnitTable& unit_table() {
  static const UnitTable table;
  return table;
}

PLATEWRIGHT_BODY Recipe recipe_for(std::string name, const Rational& portions,
                                   std::vector<RecipeLine> lines) {
  Recipe out;
  out.name = std::move(name);
  out.makes.portions = portions;
  out.lines = std::move(lines);
  return out;
}

PLATEWRIGHT_BODY Recipe recipe_making(std::string name, const Amount& makes,
                                      std::vector<RecipeLine> lines) {
  Recipe out;
  out.name = std::move(name);
  out.makes.amount = makes;
  out.lines = std::move(lines);
  return out;
}

PLATEWRIGHT_BODY Ingredient ingredient(std::string name, const Rational& yield) {
  Ingredient out;
  out.name = name;
  out.weights.name = std::move(name);
  if (yield != 1) {
    Rung rung;
    rung.to = Stage::trimmed;
    rung.yield = yield;
    rung.holds = {Loss::trim};
    out.ladder = Ladder({rung});
  }
  return out;
}

PLATEWRIGHT_BODY MeasureWeight weighing(const Amount& measure, const Mass& weighs) {
  MeasureWeight out{measure, weighs};
  out.own = true;
  return out;
}

}  // namespace platewright::builders
