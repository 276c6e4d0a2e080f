// SPDX-License-Identifier: MIT
// No path through sub-recipes loses an allergen, and no one is told that they can eat it.

#include "platewright/event/eating.hpp"

#include <rapidcheck.h>

#include <algorithm>
#include <set>

#include "platewright/event/food_labels.hpp"
#include "support/allergen_rows.hpp"
#include "support/catch.hpp"
#include "support/change_each.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// A random kitchen whose ingredients hold, may hold, or do not state allergens.
TestKitchen stated_kitchen() {
  TestKitchen out = random_kitchen();
  change_each(out.book.ingredients, [&](Ingredient& ingredient) {
    ingredient.allergens = std::nullopt;
    const auto word = [] {
      return *rc::gen::element<std::string>("wheat", "milk", "cereals containing gluten", "fish");
    };
    if (*rc::gen::inRange(0, 5) != 0) ingredient.allergens.emplace();
    if (ingredient.allergens && *rc::gen::arbitrary<bool>()) {
      ingredient.allergens->push_back(word());
    }
    if (*rc::gen::arbitrary<bool>()) ingredient.may_contain.push_back(word());
  });
  return out;
}

/// Every ingredient below a recipe, on every path, by plain recursion.
void add_below(const RecipeBook& book, const std::string& recipe, std::set<std::string>& out) {
  for (const RecipeLine& line : book.recipe(recipe).lines) {
    if (book.find_recipe(line.name) != nullptr) {
      add_below(book, line.name, out);
    } else {
      out.insert(line.name);
    }
  }
}

bool holds(const std::vector<std::string>& keys, const std::string& key) {
  const auto all = allergen_rows().with_implied({keys.begin(), keys.end()});
  return all.count(key) != 0;
}

}  // namespace

TEST_CASE("who can eat a dish is who can eat each ingredient on every path to it") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = stated_kitchen();
    const AllergenTable table = allergen_rows();
    for (const auto& [name, recipe] : kitchen.book.recipes) {
      const RecipeAllergens found = allergens_of(recipe, kitchen.book, table);
      std::set<std::string> below;
      add_below(kitchen.book, name, below);
      for (const char* key : {"wheat", "milk", "cereals containing gluten", "fish"}) {
        bool held = false;
        bool warned = false;
        bool unknown = false;
        for (const std::string& each : below) {
          const Ingredient& ingredient = kitchen.book.ingredient(each);
          unknown = unknown || !ingredient.allergens;
          held = held || (ingredient.allergens && holds(*ingredient.allergens, key));
          warned = warned || holds(ingredient.may_contain, key);
        }
        GuestKind guests{"guests", 1, 1, 1};
        guests.without = {key};
        const Eats expected = held      ? Eats::cannot
                              : warned  ? Eats::may_contain
                              : unknown ? Eats::not_known
                                        : Eats::can;
        RC_ASSERT(eats(guests, found).eats == expected);
      }
    }
  }));
}

TEST_CASE("what is declared by both laws names every ingredient of every allergen") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = stated_kitchen();
    const AllergenTable table = allergen_rows();
    for (const auto& [name, recipe] : kitchen.book.recipes) {
      const RecipeAllergens found = allergens_of(recipe, kitchen.book, table);
      const DeclaredAllergens told = declared(found, table);
      for (const AllergenFound& one : found.found) {
        for (const std::string& ingredient : one.ingredients) {
          const auto lines =
              std::count_if(told.contains.begin(), told.contains.end(), [&](const auto& line) {
                const auto& kinds = line.kind_of;
                const bool of_it = line.key == one.key ||
                                   std::find(kinds.begin(), kinds.end(), one.key) != kinds.end();
                const auto& by = line.ingredients;
                return of_it && std::find(by.begin(), by.end(), ingredient) != by.end();
              });
          RC_ASSERT(lines == 1);
        }
      }
      RC_ASSERT(told.not_stated == found.not_stated);
    }
  }));
}

TEST_CASE("the label of what goes into a dish names nothing that the dish's own label leaves out") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = stated_kitchen();
    const AllergenTable table = allergen_rows();
    const EventPlan plan({random_event(), kitchen.book, kitchen.prices});
    const auto labels = food_labels(plan, Timeline(), table);
    const auto label_of = [&](const std::string& food) {
      return std::find_if(labels.begin(), labels.end(),
                          [&](const FoodLabel& label) { return label.food == food; });
    };
    for (const FoodLabel& label : labels) {
      std::set<std::string> below;
      add_below(kitchen.book, label.food, below);
      for (const RecipeLine& line : kitchen.book.recipe(label.food).lines) {
        if (kitchen.book.find_recipe(line.name) == nullptr) continue;
        const auto part = label_of(line.name);
        RC_ASSERT(part != labels.end());
        RC_ASSERT(part < label_of(label.food));
        for (const AllergenFound& held : part->allergens.found) {
          RC_ASSERT(std::any_of(label.allergens.found.begin(), label.allergens.found.end(),
                                [&](const AllergenFound& one) { return one.key == held.key; }));
        }
      }
      for (const std::string& ingredient : below) {
        if (kitchen.book.ingredient(ingredient).allergens) continue;
        const auto& unknown = label.declared.not_stated;
        RC_ASSERT(std::find(unknown.begin(), unknown.end(), ingredient) != unknown.end());
      }
    }
  }));
}
