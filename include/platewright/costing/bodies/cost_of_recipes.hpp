// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/cost_of_recipes.hpp.

#include "platewright/costing/cost_of_recipes.hpp"

namespace platewright {

PLATEWRIGHT_BODY const std::set<std::string>& UnpricedGoods::of(const Recipe& recipe) {
  const auto [place, is_new] = known_.try_emplace(recipe.name);
  std::set<std::string>& out = place->second;
  if (!is_new) return out;
  for (const RecipeLine& line : recipe.lines) {
    if (line.amount.to_taste()) continue;
    if (const Recipe* below = book_.recipe_of(line)) {
      const std::set<std::string>& more = of(*below);
      out.insert(more.begin(), more.end());
    } else if (!has_price(line.name)) {
      out.insert(line.name);
    }
  }
  return out;
}

PLATEWRIGHT_BODY bool UnpricedGoods::has_price(const std::string& ingredient) const {
  const PriceEntry* entry = prices_.find(ingredient);
  return entry != nullptr && (entry->free || !entry->purchases.empty());
}

PLATEWRIGHT_BODY std::vector<RecipeCost> cost_of_recipes(const std::vector<std::string>& names,
                                                         const RecipeBook& book,
                                                         const PriceList& prices) {
  std::vector<RecipeCost> out;
  UnpricedGoods unpriced(book, prices);
  std::optional<PlateCosting> costing;
  for (const std::string& name : names) {
    // Begun anew before what is kept is so much that it counts for the next recipe's bound.
    if (!costing || costing->lines_kept() > most_plan_lines / 10) costing.emplace(book, prices);
    const Recipe& recipe = book.recipe(name);
    const ScaledRecipe scaled = scale(recipe, plan_for_factor(recipe, 1, book), book);
    RecipeCost row;
    row.recipe = name;
    row.makes = whole_amount(recipe);
    row.portions = scaled.plan.portions;
    row.unpriced = unpriced.of(recipe);
    if (row.unpriced.empty()) {
      const PlateCost cost = costing->cost(scaled);
      row.total = cost.total;
      row.per_portion = cost.per_portion;
    }
    out.push_back(std::move(row));
  }
  return out;
}

}  // namespace platewright
