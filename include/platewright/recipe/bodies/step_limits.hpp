// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/step_limits.hpp.

#include <algorithm>

#include "platewright/recipe/step_limits.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<ThawingTime> StepThawing::time() const {
  if (!piece) return std::nullopt;
  return thawing_time(rate, *piece);
}

namespace detail {

/// The weight of what the step is about: `piece_weight`, if it is the tested pieces.
PLATEWRIGHT_BODY std::optional<Mass> piece_of_step(const MethodStep& step, const Recipe& recipe,
                                                   const RecipeBook& book,
                                                   const std::optional<Mass>& piece_weight) {
  const RecipeLine* line = piece_line(recipe, book);
  if (line == nullptr) return std::nullopt;
  const bool used = step.uses.empty() ||
                    std::find(step.uses.begin(), step.uses.end(), line->name) != step.uses.end();
  if (!used) return std::nullopt;
  return piece_weight ? piece_weight : std::optional<Mass>(recipe.tested->weight);
}

}  // namespace detail

PLATEWRIGHT_BODY StepLimits limits_of(const MethodStep& step, const Recipe& recipe,
                                      const RecipeBook& book, const SafetyTable& table,
                                      const std::optional<Mass>& piece_weight) {
  StepLimits out;
  if (!step.control) return out;
  const StepControl& control = *step.control;
  for (const StepRule& rule : table.step_rules) {
    if (applies(rule, control.kind, control.where)) out.rules.push_back(rule);
  }
  if (control.kind != StepKind::thaw) return out;
  for (const ThawingRate& rate : table.thawing_rates) {
    if (rate.where != control.where) continue;
    out.thawing = StepThawing{rate, detail::piece_of_step(step, recipe, book, piece_weight)};
    break;
  }
  return out;
}

}  // namespace platewright
