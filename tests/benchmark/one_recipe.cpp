// SPDX-License-Identifier: MIT
// What one recipe of twelve lines takes to scale and cost exactly, and how many amounts are read
// and converted in a second: in one dimension, and through a weight by volume.

#include <benchmark/benchmark.h>

#include <array>

#include "platewright/costing/plate_cost.hpp"
#include "platewright/costing/purchase_builders.hpp"
#include "platewright/recipe/recipe_builders.hpp"

using namespace platewright;
using namespace platewright::builders;

namespace {

constexpr int twelve = 12;
/// Amounts and packs as books have them: fractions, capacities bought by weight, pieces.
constexpr std::array<const char*, twelve> amounts{"7 1/2 lb", "2 1/4 cups", "8 cloves", "1 tbsp",
                                                  "2 tsp",    "3 lb 6 oz",  "1 qt",     "1/3 cup",
                                                  "12 oz",    "250 g",      "2-3 tbsp", "1 1/2 pt"};

/// A whole book of one recipe.
struct Kitchen {
  RecipeBook book;
  PriceList prices;

  Kitchen() {
    Recipe dish = recipe_for("dish", 10, {});
    for (int i = 0; i < twelve; ++i) {
      const std::string name = "goods " + std::to_string(i);
      Ingredient goods = ingredient(name, i % 3 == 0 ? fraction(7, 8) : Rational(1));
      goods.weights.rows = {weighing(amount("1 cup"), Mass::of(120 + i, units::gram)),
                            weighing(amount("1 clove"), Mass::of(3, units::gram))};
      book.ingredients.emplace(name, std::move(goods));
      prices.add(name, pack(amount(i % 2 == 0 ? "5 lb" : "2 kg"),
                            Money::of(fraction(1995 + 37 * i, 100), units::currency_unit)));
      dish.lines.push_back(line(name, amounts[static_cast<std::size_t>(i)]));
    }
    book.recipes.emplace("dish", std::move(dish));
  }
};

void scale_and_cost(benchmark::State& state) {
  const Kitchen kitchen;
  const Recipe& dish = kitchen.book.recipe("dish");
  std::int64_t portions = 0;
  for (auto _ : state) {
    portions = portions % 400 + 7;  // another number of guests each time
    const ScaledRecipe scaled =
        scale(dish, plan_for_portions(dish, portions, kitchen.book), kitchen.book);
    benchmark::DoNotOptimize(plate_cost(scaled, kitchen.book, kitchen.prices));
  }
}
BENCHMARK(scale_and_cost)->Unit(benchmark::kMicrosecond);

constexpr std::array<const char*, 4> capacities{"2 1/4 cups", "3 tbsp", "1 1/2 qt", "7/8 tsp"};

void read_and_convert(benchmark::State& state) {
  const Unit litre = unit_table().find("L", MeasuringSystem::us);
  std::size_t at = 0;
  for (auto _ : state) {
    benchmark::DoNotOptimize(in_unit(amount(capacities[at++ % capacities.size()]), litre));
  }
  state.SetItemsProcessed(state.iterations());
}
BENCHMARK(read_and_convert);

void read_and_weigh(benchmark::State& state) {
  IngredientWeights flour{"flour", {weighing(amount("1 cup"), Mass::of(125, units::gram))}};
  std::size_t at = 0;
  for (auto _ : state) {
    benchmark::DoNotOptimize(weight_of(amount(capacities[at++ % capacities.size()]), flour));
  }
  state.SetItemsProcessed(state.iterations());
}
BENCHMARK(read_and_weigh);

}  // namespace
