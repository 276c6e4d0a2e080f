#pragma once
// Recipes, larders and prices as tests write them: amounts as a cook writes them.

#include <string>
#include <utility>
#include <vector>

#include "platewright/costing/price_list.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "platewright/recipe/recipe_book.hpp"
#include "support/weights.hpp"

namespace platewright::test {

inline const UnitTable& unit_table() {
  static const UnitTable table;
  return table;
}
inline Amount amount(const char* text) {
  return read_amount(text, unit_table(), MeasuringSystem::us);
}
inline Duration time_of(const char* text) {
  return to_duration(amount(text));
}

inline RecipeLine line(std::string name, const char* text,
                       ScalingRule scale = ScalingRule::proportional) {
  RecipeLine out;
  out.name = std::move(name);
  out.amount = read_line_amount(text, unit_table(), MeasuringSystem::us);
  out.scale = scale;
  return out;
}
inline RecipeLine from_recipe(std::string name, const char* text) {
  RecipeLine out = line(std::move(name), text);
  out.is_recipe = true;
  return out;
}

inline Recipe recipe_for(std::string name, const Rational& portions,
                         std::vector<RecipeLine> lines) {
  Recipe out;
  out.name = std::move(name);
  out.makes.portions = portions;
  out.lines = std::move(lines);
  return out;
}
inline Recipe recipe_making(std::string name, const char* makes, std::vector<RecipeLine> lines) {
  Recipe out;
  out.name = std::move(name);
  out.makes.amount = amount(makes);
  out.lines = std::move(lines);
  return out;
}

/// An ingredient whose trim yield is `yield`.
inline Ingredient ingredient(std::string name, const Rational& yield = 1) {
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
inline MeasureWeight weighing(const char* measure, const Mass& weighs) {
  MeasureWeight out;
  out.measure = amount(measure);
  out.weighs = weighs;
  out.own = true;
  return out;
}

inline Purchase pack(const char* content, const char* price, std::string supplier = "the market") {
  Purchase out;
  out.content = amount(content);
  out.price = money(price);
  out.supplier = std::move(supplier);
  return out;
}
/// A piece of varying weight; the price is for one of average weight.
inline Purchase piece(const char* content, const char* price, std::string supplier) {
  Purchase out = pack(content, price, std::move(supplier));
  out.by_the_piece = true;
  return out;
}

/// A book with its prices.
struct Kitchen {
  RecipeBook book;
  PriceList prices;

  void add(Recipe recipe) { book.recipes[recipe.name] = std::move(recipe); }
  void add(Ingredient added) { book.ingredients[added.name] = std::move(added); }
  void add(Ingredient added, Purchase purchase) {
    prices.entries[added.name].purchases.push_back(std::move(purchase));
    add(std::move(added));
  }
};

}  // namespace platewright::test
