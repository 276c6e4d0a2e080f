// SPDX-License-Identifier: MIT
// What holds for the cost of any recipe.

#include "platewright/costing/cost_of_recipes.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/number/apportion.hpp"
#include "platewright/recipe/recipe_allergens.hpp"
#include "support/catch.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

PlateCost cost_of(const TestKitchen& kitchen, const Rational& factor) {
  const Recipe& recipe = kitchen.book.recipe("recipe 5");
  return plate_cost(scale(recipe, plan_for_factor(recipe, factor, kitchen.book), kitchen.book),
                    kitchen.book, kitchen.prices);
}

/// The ingredients of a recipe and of all that it uses, the long way round.
std::set<std::string> ingredients_of(const RecipeBook& book, const std::string& name) {
  std::set<std::string> out;
  for (const RecipeLine& line : book.recipe(name).lines) {
    if (book.recipe_of(line) != nullptr) {
      out.merge(ingredients_of(book, line.name));
    } else {
      out.insert(line.name);
    }
  }
  return out;
}

}  // namespace

TEST_CASE("lines sum to the total, as they are and as they are printed") {
  CHECK(rc::check([] {
    const PlateCost cost = cost_of(random_kitchen(), random_number(9));
    Money sum;
    Rational shares;
    std::vector<Rational> lines;
    for (const CostLine& line : cost.lines) {
      sum += line.cost;
      shares += line.share;
      lines.push_back(amount_of(line.cost));
    }
    RC_ASSERT(sum == cost.total);
    RC_ASSERT(shares == 1);
    const Rational cent = fraction(1, 100);
    Rational printed_sum;
    for (const Rational& line : apportion(lines, cent)) printed_sum += line;
    RC_ASSERT(printed_sum ==
              amount_of(round_money(cost.total, minor_unit(Currency("USD")), Rounding::half_up)));
  }));
}

TEST_CASE("a line costs what is bought at one price and what is used at the other") {
  CHECK(rc::check([] {
    for (const CostLine& line : cost_of(random_kitchen(), random_number(9)).lines) {
      const Amount bought = in_unit(*line.purchased, line.as_purchased->unit);
      RC_ASSERT(line.cost == line.as_purchased->price * bought.number);
      const Amount used = in_unit(*line.used, line.edible_portion->unit);
      RC_ASSERT(line.cost == line.edible_portion->price * used.number);
    }
  }));
}

TEST_CASE("the cost follows the size of the batch, a portion's does not") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = random_kitchen();
    const Rational factor = random_number(9);
    const PlateCost one = cost_of(kitchen, 1);
    const PlateCost scaled_up = cost_of(kitchen, factor);
    RC_ASSERT(scaled_up.total == one.total * factor);
    RC_ASSERT(*scaled_up.per_portion == *one.per_portion);
  }));
}

TEST_CASE("a dearer ingredient makes the plate dearer by its own share") {
  CHECK(rc::check([] {
    TestKitchen kitchen = random_kitchen();
    const Money before = cost_of(kitchen, 1).total;
    Money all_raised;
    for (auto& [name, entry] : kitchen.prices.entries) {
      const Money usual = entry.purchases[0].price;
      entry.purchases[0].price = usual * Rational(2);
      all_raised += cost_of(kitchen, 1).total - before;
      entry.purchases[0].price = usual;
    }
    RC_ASSERT(all_raised == before);
  }));
}

TEST_CASE("every allergen reaches the top") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = random_kitchen();
    const RecipeAllergens top = allergens_of(kitchen.book.recipe("recipe 5"), kitchen.book);
    std::set<std::string> found;
    for (const AllergenFound& allergen : top.found) found.insert(allergen.key);
    RC_ASSERT(found == ingredients_of(kitchen.book, "recipe 5"));
    RC_ASSERT(top.not_stated.empty());
  }));
}

TEST_CASE("of many recipes each costs what it costs by itself") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = random_kitchen();
    std::vector<std::string> names;
    for (const auto& [name, recipe] : kitchen.book.recipes) names.push_back(name);
    const auto costs = cost_of_recipes(names, kitchen.book, kitchen.prices);
    RC_ASSERT(costs.size() == names.size());
    for (const RecipeCost& row : costs) {
      const Recipe& recipe = kitchen.book.recipe(row.recipe);
      const PlateCost alone =
          plate_cost(scale(recipe, plan_for_factor(recipe, 1, kitchen.book), kitchen.book),
                     kitchen.book, kitchen.prices);
      RC_ASSERT(row.unpriced.empty());
      RC_ASSERT(row.total == alone.total);
      RC_ASSERT(row.portions == alone.portions);
      RC_ASSERT(row.per_portion == alone.per_portion);
    }
  }));
}
