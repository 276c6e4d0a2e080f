// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/price_movers.hpp.

#include <algorithm>
#include <set>
#include <utility>

#include "platewright/event/price_movers.hpp"

namespace platewright {

namespace detail {

/// The ingredient with the yield of its ladder times a factor, its spread left out; a dish of
/// whole pieces of it serves as many fewer portions, whoever counted them.
PLATEWRIGHT_BODY void change_yield(Occasion& occasion, const std::string& name,
                                   const Rational& factor) {
  const RecipeBook before = occasion.book;
  occasion.book.ingredients.change(name, [&](Ingredient& ingredient) {
    std::vector<Rung> rungs = ingredient.ladder.rungs();
    rungs.back().yield *= factor;
    ingredient.ladder = Ladder(std::move(rungs));
  });
  if (!before.ingredient(name).is_cut) return;
  for (const auto& [user, recipe] : before.recipes) {
    const RecipeLine* line = piece_line(recipe, before);
    if (line == nullptr || line->name != name || !recipe.makes.portions) continue;
    occasion.book.recipes.change(
        user, [&](Recipe& changed) { changed.makes.portions = *changed.makes.portions * factor; });
  }
}

/// The ingredients that are paid for in this production.
PLATEWRIGHT_BODY std::vector<std::string> paid_ingredients(const Occasion& occasion) {
  std::vector<std::string> out;
  std::set<std::string> met;
  const Production production = plan_production(occasion.event, occasion.book, occasion.prices);
  const auto add_from = [&](const ScaledRecipe& scaled) {
    for (const ScaledLine& line : scaled.lines) {
      const PriceEntry* entry =
          line.recipe != nullptr ? nullptr : occasion.prices.find(line.line->name);
      if (entry == nullptr || entry->free || entry->purchases.empty()) continue;
      if (met.insert(line.line->name).second) out.push_back(line.line->name);
    }
  };
  for (const DishPlan& dish : production.dishes) add_from(dish.scaled);
  for (const SubRecipePlan& sub_recipe : production.sub_recipes) add_from(sub_recipe.scaled);
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY std::vector<PriceMover> price_movers(const Occasion& occasion,
                                                      const Rational& change, std::size_t most) {
  if (change <= 0 || change >= 1) {
    throw Failure(problems::share_out_of_range("a change", as_exact(change),
                                               "a share above 0 and below 100 %"));
  }
  const Money before = quote_of(occasion).exact_price;
  const std::vector<std::string> names = detail::paid_ingredients(occasion);
  check_trials("the movers", 2 * names.size(), size_of_plan(occasion));
  Occasion changed = occasion;
  std::vector<PriceMover> out;
  for (const std::string& name : names) {
    std::vector<Purchase>& purchases = changed.prices.entries.at(name).purchases;
    const std::vector<Purchase> as_written = purchases;
    for (Purchase& purchase : purchases) purchase.price = purchase.price * Rational(1 + change);
    out.push_back({Moves::price, name, quote_of(changed).exact_price - before});
    purchases = as_written;
    const Ingredient ingredient = changed.book.ingredient(name);
    if (ingredient.ladder.loses_nothing()) continue;
    detail::change_yield(changed, name, 1 - change);
    out.push_back({Moves::yield, name, quote_of(changed).exact_price - before});
    // What is exact can be turned back.
    detail::change_yield(changed, name, 1 / Rational(1 - change));
    changed.book.add(ingredient);
  }
  const auto size = [](const Money& moved) { return moved < Money{} ? -moved : moved; };
  std::stable_sort(out.begin(), out.end(), [&](const PriceMover& left, const PriceMover& right) {
    return size(left.moved) > size(right.moved);
  });
  if (out.size() > most) out.resize(most);
  return out;
}

}  // namespace platewright
