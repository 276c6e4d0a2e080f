// SPDX-License-Identifier: MIT
#pragma once
// What each of many recipes costs, in one go.

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "platewright/costing/plate_cost.hpp"

namespace platewright {

/// One recipe of many, as it is written: the tested batch.
struct RecipeCost {
  std::string recipe;
  std::optional<Amount> makes;  ///< the whole batch, where the recipe says how much that is
  std::optional<Rational> portions;
  /// Of the batch and of one portion; nothing where something in it has no price.
  std::optional<Money> total;
  std::optional<Money> per_portion;
  std::set<std::string> unpriced;  ///< what has no price, in it and in the recipes that it uses
};

/// What has no price on the list, of a recipe and of all that it uses. Each recipe is looked at
/// once.
class UnpricedGoods {
 public:
  UnpricedGoods(const RecipeBook& book, const PriceList& prices) : book_(book), prices_(prices) {}
  UnpricedGoods(const RecipeBook&&, const PriceList&) = delete;
  UnpricedGoods(const RecipeBook&, const PriceList&&) = delete;
  UnpricedGoods(const RecipeBook&&, const PriceList&&) = delete;

  /// The book must have been checked: no recipes that use each other in a circle, none too deep.
  const std::set<std::string>& of(const Recipe& recipe) {
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

 private:
  bool has_price(const std::string& ingredient) const {
    const PriceEntry* entry = prices_.find(ingredient);
    return entry != nullptr && (entry->free || !entry->purchases.empty());
  }

  const RecipeBook& book_;
  const PriceList& prices_;
  std::map<std::string, std::set<std::string>> known_;
};

/// The cost of every recipe named, in that order, each as `PlateCosting` has it by itself; what one
/// uses of another is costed once for all of them. What has no price is named and not costed; any
/// other Failure of `PlateCosting::cost` is thrown.
inline std::vector<RecipeCost> cost_of_recipes(const std::vector<std::string>& names,
                                               const RecipeBook& book, const PriceList& prices) {
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
std::vector<RecipeCost> cost_of_recipes(const std::vector<std::string>&, const RecipeBook&&,
                                        const PriceList&) = delete;

}  // namespace platewright
