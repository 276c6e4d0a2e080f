// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/needs.hpp.

#include <algorithm>
#include <map>
#include <utility>

#include "platewright/event/needs.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Amount> Need::to_buy() const {
  if (!purchased) return std::nullopt;
  Rational number = purchased->number;
  if (from_by_products) number -= from_by_products->number;
  if (in_store) number -= in_unit(*in_store, purchased->unit).number;
  if (number <= 0) return std::nullopt;
  return Amount{number, purchased->unit};
}

namespace detail {

PLATEWRIGHT_BODY void add_used(std::vector<Amount>& sums, const Amount& used) {
  for (Amount& other : sums) {
    if (!same_measure(other.unit, used.unit)) continue;
    other = sum(other, used);
    return;
  }
  sums.push_back(used);
}

/// The days on which its recipes begin are those of `begins`, which may have none.
PLATEWRIGHT_BODY void add_needs_of(const ScaledRecipe& scaled, const RecipeBook& book,
                                   const PriceList& prices,
                                   const std::map<std::string, LocalTime>& begins,
                                   std::map<std::string, Need>& needs) {
  for (const ScaledLine& line : scaled.lines) {
    if (line.recipe != nullptr) continue;
    const std::string& name = line.line->name;
    const Ingredient& ingredient = book.ingredient(name);
    Need& need = needs[name];
    need.ingredient = name;
    const std::string& user = scaled.recipe->name;
    if (std::find(need.used_by.begin(), need.used_by.end(), user) == need.used_by.end()) {
      need.used_by.push_back(user);
    }
    if (const auto begin = begins.find(user); begin != begins.end()) {
      keep_earlier(need.first_used, begin->second);
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
    need.offer = entry->purchases.front();
    const auto bought = bought_for(scaled, line, ingredient, book, *need.offer);
    need.purchased = need.purchased ? sum(*need.purchased, bought->amount) : bought->amount;
  }
}

/// Bones and fat of one ingredient that another one stands for in the recipes.
PLATEWRIGHT_BODY void add_by_products(const PriceList& prices, std::map<std::string, Need>& needs) {
  for (const auto& [name, giver] : needs) {
    const PriceEntry* entry = prices.find(name);
    if (entry == nullptr || !giver.purchased) continue;
    for (const ByProduct& by_product : entry->by_products) {
      const auto taker = needs.find(by_product.used_as);
      if (taker == needs.end() || !taker->second.purchased) continue;
      Need& need = taker->second;
      const Amount left =
          in_unit(by_product_of(by_product, *giver.purchased), need.purchased->unit);
      const Rational before = need.from_by_products ? need.from_by_products->number : Rational(0);
      need.from_by_products = Amount{
          std::min(Rational(before + left.number), need.purchased->number), need.purchased->unit};
    }
  }
}

}  // namespace detail

PLATEWRIGHT_BODY std::vector<Need> needs_of(const Production& production, const RecipeBook& book,
                                            const PriceList& prices,
                                            const std::optional<ZonedTime>& served) {
  std::map<std::string, LocalTime> begins;
  if (served) begins = soonest_beginnings(production, *served);
  std::map<std::string, Need> needs;
  for (const DishPlan& dish : production.dishes) {
    detail::add_needs_of(dish.scaled, book, prices, begins, needs);
  }
  for (const SubRecipePlan& sub_recipe : production.sub_recipes) {
    detail::add_needs_of(sub_recipe.scaled, book, prices, begins, needs);
  }
  detail::add_by_products(prices, needs);
  for (auto& [name, need] : needs) {
    const PriceEntry* entry = prices.find(name);
    if (entry == nullptr) continue;
    need.in_store = entry->in_store;
    need.keeping = entry->keeping;
  }
  std::vector<Need> out;
  out.reserve(needs.size());
  // Each is taken out of the map, so that there are never two of all of them.
  while (!needs.empty()) out.push_back(std::move(needs.extract(needs.begin()).mapped()));
  return out;
}

}  // namespace platewright
