// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/dish_notices.hpp.

#include <algorithm>
#include <iterator>
#include <optional>
#include <set>
#include <utility>

#include "platewright/event/dish_notices.hpp"

namespace platewright {

PLATEWRIGHT_BODY PieceWeights piece_weights_of(const Production& production) {
  PieceWeights out;
  const auto add = [&](const ScaledRecipe& scaled) {
    if (scaled.plan.piece_weight) out.emplace(scaled.recipe->name, *scaled.plan.piece_weight);
  };
  for (const DishPlan& dish : production.dishes) add(dish.scaled);
  for (const SubRecipePlan& sub_recipe : production.sub_recipes) add(sub_recipe.scaled);
  return out;
}

namespace detail {

PLATEWRIGHT_BODY void add_notices_of(const Recipe& recipe, const RecipeBook& book,
                                     const SafetyTable& safety, const PieceWeights& pieces,
                                     DishNotice& out) {
  TemperatureNotices found = temperature_notices(recipe, book, safety);
  std::move(found.undercooked.begin(), found.undercooked.end(),
            std::back_inserter(out.undercooked));
  std::move(found.not_known.begin(), found.not_known.end(), std::back_inserter(out.not_known));
  const auto piece = pieces.find(recipe.name);
  const auto weight =
      piece == pieces.end() ? std::optional<Mass>() : std::optional<Mass>(piece->second);
  for (StepNotice& notice : step_notices(recipe, book, safety, weight)) {
    out.steps.push_back({recipe.name, std::move(notice)});
  }
}

}  // namespace detail

PLATEWRIGHT_BODY std::vector<DishNotice> dish_notices(const Event& event, const RecipeBook& book,
                                                      const AllergenTable& allergens,
                                                      const SafetyTable& safety,
                                                      const PieceWeights& pieces) {
  std::vector<DishNotice> out;
  for (const MenuLine& line : event.menu) {
    const auto told = [&](const DishNotice& notice) { return notice.dish == line.recipe; };
    if (std::any_of(out.begin(), out.end(), told)) continue;
    DishNotice notice;
    notice.dish = line.recipe;
    notice.allergens = allergens_of(book.recipe(line.recipe), book, allergens);
    notice.declared = declared(notice.allergens, allergens);
    std::set<std::string> seen;
    std::vector<std::string> made;
    detail::append_makers_first(book, line.recipe, seen, made);
    for (const std::string& name : made) {
      detail::add_notices_of(book.recipe(name), book, safety, pieces, notice);
    }
    out.push_back(std::move(notice));
  }
  return out;
}

PLATEWRIGHT_BODY std::vector<DishNotice> dish_notices(const EventPlan& plan,
                                                      const AllergenTable& allergens,
                                                      const SafetyTable& safety) {
  return dish_notices(plan.event(), plan.recipes(), allergens, safety,
                      piece_weights_of(plan.production()));
}

}  // namespace platewright
