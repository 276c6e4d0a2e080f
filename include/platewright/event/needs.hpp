#pragma once
// What a whole production takes from the store, ingredient by ingredient.

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/production.hpp"

namespace platewright {

/// All that is needed of one ingredient.
struct Need {
  std::string ingredient;
  /// As purchased, in the unit of the preferred offer's content; nothing where there is no offer.
  std::optional<Amount> purchased;
  /// As the recipes have it, one sum for each measure: what is known where there is no offer.
  std::vector<Amount> used;
  bool free = false;      ///< nothing is paid for it
  bool to_taste = false;  ///< some line of it is to taste, which no amount here holds
  std::vector<std::string> used_by;
};

namespace detail {

inline void add_used(std::vector<Amount>& sums, const Amount& used) {
  for (Amount& other : sums) {
    if (!same_measure(other.unit, used.unit)) continue;
    other = sum(other, used);
    return;
  }
  sums.push_back(used);
}

inline void add_needs_of(const ScaledRecipe& scaled, const RecipeBook& book,
                         const PriceList& prices, std::map<std::string, Need>& needs) {
  for (const ScaledLine& line : scaled.lines) {
    if (line.line->is_recipe) continue;
    const std::string& name = line.line->name;
    const Ingredient& ingredient = book.ingredient(name);
    Need& need = needs[name];
    need.ingredient = name;
    const std::string& user = scaled.recipe->name;
    if (std::find(need.used_by.begin(), need.used_by.end(), user) == need.used_by.end()) {
      need.used_by.push_back(user);
    }
    const std::optional<Amount> used = amount_to_buy(line.amount);
    if (!used) {
      need.to_taste = true;
      continue;
    }
    add_used(need.used, *used);
    const PriceEntry* entry = prices.find(name);
    need.free = entry != nullptr && entry->free;
    if (need.free || entry == nullptr || entry->purchases.empty()) continue;
    const auto bought = bought_for(scaled, line, ingredient, book, entry->purchases.front());
    need.purchased = need.purchased ? sum(*need.purchased, bought->amount) : bought->amount;
  }
}

}  // namespace detail

/// Every ingredient of all dishes and sub-recipes, by name. Unlike a plate cost, it holds the whole
/// pieces of sub-recipes that are made for this production. Throws Failure, at the line's place,
/// where an amount does not lead to the pack's unit.
inline std::vector<Need> needs_of(const Production& production, const RecipeBook& book,
                                  const PriceList& prices) {
  std::map<std::string, Need> needs;
  for (const DishPlan& dish : production.dishes) {
    detail::add_needs_of(dish.scaled, book, prices, needs);
  }
  for (const SubRecipePlan& sub_recipe : production.sub_recipes) {
    detail::add_needs_of(sub_recipe.scaled, book, prices, needs);
  }
  std::vector<Need> out;
  for (auto& [name, need] : needs) out.push_back(std::move(need));
  return out;
}

}  // namespace platewright
