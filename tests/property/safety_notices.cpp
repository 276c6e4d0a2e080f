// SPDX-License-Identifier: MIT
// What one sheet warns of, every sheet and every check warns of.

#include <rapidcheck.h>

#include <algorithm>

#include "platewright/book/check_book.hpp"
#include "platewright/card/recipe_card.hpp"
#include "platewright/card/timeline_sheet.hpp"
#include "platewright/card/writers.hpp"
#include "platewright/event/dish_notices.hpp"
#include "platewright/event/safety_warnings.hpp"
#include "support/catch.hpp"
#include "support/change_each.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// A random kitchen of which some goods come from animals and some recipes are cooked to a
/// temperature inside, some of them hours before they are served.
Book cooked_book() {
  TestKitchen kitchen = random_kitchen();
  change_each(kitchen.book.ingredients, [&](Ingredient& ingredient) {
    const auto kind = *rc::gen::element<std::string>("poultry", "ground", "whole cut", "fish",
                                                     "none", "none", "");
    ingredient.safety = std::nullopt;
    if (kind == "none") ingredient.safety = FoodKind::without_minimum();
    if (kind != "none" && !kind.empty()) ingredient.safety = FoodKind(kind);
  });
  change_each(kitchen.book.recipes, [&](Recipe& recipe) {
    if (*rc::gen::arbitrary<bool>()) return;
    OvenStep step;
    step.oven = Temperature::fahrenheit(350);
    step.time = Duration::of(1, units::hour);
    step.until = Temperature::fahrenheit(*rc::gen::inRange<std::int64_t>(125, 170));
    recipe.oven = {step};
    recipe.rest = Duration::of(*rc::gen::inRange<std::int64_t>(0, 360), units::minute);
  });
  Book book;
  book.recipes = kitchen.book;
  book.prices = kitchen.prices;
  book.events.push_back(random_event());
  return book;
}

/// The recipes that a list warns of under this id, by how the problem begins.
std::size_t warnings_of(const ProblemList& list, const std::string& id, const std::string& recipe) {
  return static_cast<std::size_t>(
      std::count_if(list.all().begin(), list.all().end(), [&](const Problem& problem) {
        return problem.id == id && problem.found.find(in_quotes(recipe) + " ") == 0;
      }));
}

bool has(const std::string& text, const char* words) {
  return text.find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("the check of a book warns of each recipe as its card does") {
  CHECK(rc::check([] {
    const Book book = cooked_book();
    const ProblemList found = check(book);
    RC_PRE(!found.has_errors());
    for (const auto& [name, recipe] : book.recipes.recipes) {
      const ScaledRecipe scaled =
          scale(recipe, plan_for_factor(recipe, 1, book.recipes), book.recipes);
      const std::string card = write_text(recipe_card(scaled, book));
      const bool warned = warnings_of(found, "below-the-minimum", name) > 0;
      RC_CLASSIFY(warned);
      RC_ASSERT(has(card, "BELOW THE MINIMUM") == warned);
    }
  }));
}

TEST_CASE(
    "the check of an event warns of all that its plan, its timeline and its client are told") {
  CHECK(rc::check([] {
    const Book book = cooked_book();
    const Event& event = book.events.front();
    const SafetyTable& table = book.tables.safety;
    const ProblemList found = check(book);
    RC_PRE(!found.has_errors());
    const EventPlan plan({event, book.recipes, book.prices});
    const ProblemList of_plan = safety_warnings(plan, table);
    for (const Problem& problem : of_plan.all()) {
      RC_ASSERT(std::count(found.all().begin(), found.all().end(), problem) == 1);
    }
    const Timeline timeline = make_timeline(event, plan.production(), Order{}, table);
    for (const StandingFood& food : timeline.standing) {
      RC_ASSERT(warnings_of(found, "stands-too-long", food.recipe) == 1U);
    }
    RC_ASSERT(has(write_text(timeline_sheet(event, timeline)), "STANDS TOO LONG") ==
              !timeline.standing.empty());
    for (const DishNotice& notice :
         dish_notices(event, book.recipes, book.tables.allergens, table)) {
      std::size_t warned = 0;
      for (const auto& [name, recipe] : book.recipes.recipes) {
        warned += warnings_of(of_plan, "below-the-minimum", name);
      }
      RC_ASSERT(warned >= notice.undercooked.size());
    }
  }));
}

TEST_CASE("poultry below its minimum is never called safe by a notice") {
  CHECK(rc::check([] {
    TestKitchen kitchen = random_kitchen();
    change_each(kitchen.book.ingredients,
                [&](Ingredient& ingredient) { ingredient.safety = FoodKind("poultry"); });
    Recipe recipe = kitchen.book.recipe("recipe 0");
    OvenStep step;
    step.oven = Temperature::fahrenheit(350);
    step.until = Temperature::fahrenheit(*rc::gen::inRange<std::int64_t>(100, 165));
    recipe.oven = {step};
    kitchen.book.add(std::move(recipe));
    const ProblemList found = safety_warnings(kitchen.book, Book().tables.safety);
    RC_ASSERT(found.all().size() == 1U);
    RC_ASSERT(found.all().front().id == "below-the-minimum");
    RC_ASSERT(has(found.all().front().remedy, "no notice to guests makes this food safe"));
    RC_ASSERT(has(found.all().front().remedy, "Local codes come first"));
    RC_ASSERT(!has(found.all().front().remedy, "tell guests"));
  }));
}
