// SPDX-License-Identifier: MIT
#pragma once
// Recipes, larders and prices as tests write them: amounts as a cook writes them.

#include <string>
#include <utility>
#include <vector>

#include "platewright/costing/price_list.hpp"
#include "platewright/costing/purchase_builders.hpp"
#include "platewright/recipe/recipe_book.hpp"
#include "platewright/recipe/recipe_builders.hpp"
#include "support/weights.hpp"

namespace platewright::test {

using builders::amount;
using builders::ingredient;
using builders::line;
using builders::recipe_for;
using builders::unit_table;

inline Duration time_of(const char* text) {
  return to_duration(amount(text));
}
inline Recipe recipe_making(std::string name, const char* makes, std::vector<RecipeLine> lines) {
  return builders::recipe_making(std::move(name), amount(makes), std::move(lines));
}
inline MeasureWeight weighing(const char* measure, const Mass& weighs) {
  return builders::weighing(amount(measure), weighs);
}
inline Purchase pack(const char* content, const char* price, std::string supplier = "the market") {
  return builders::pack(amount(content), money(price), std::move(supplier));
}
/// A piece of varying weight; the price is for one of average weight.
inline Purchase piece(const char* content, const char* price, std::string supplier) {
  return builders::piece(amount(content), money(price), std::move(supplier));
}

/// For recipes that name nothing which a book would have to know.
inline const RecipeBook no_book;

/// A book that knows that a litre of each of these weighs 2 lb.
inline RecipeBook two_pounds_a_litre(const std::vector<std::string>& names) {
  RecipeBook out;
  for (const std::string& name : names) {
    Ingredient each = builders::ingredient(name);
    each.weights.rows = {weighing("1 L", pounds(2))};
    out.add(std::move(each));
  }
  return out;
}

/// A book with its prices.
struct TestKitchen {
  RecipeBook book;
  PriceList prices;

  void add(Recipe recipe) { book.add(std::move(recipe)); }
  void add(Ingredient added) { book.add(std::move(added)); }
  void add(Ingredient added, Purchase purchase) {
    prices.add(added.name, std::move(purchase));
    add(std::move(added));
  }
};

}  // namespace platewright::test
