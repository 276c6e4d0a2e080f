// SPDX-License-Identifier: MIT
#include "platewright/event/eating.hpp"

#include "support/allergen_rows.hpp"
#include "support/catch.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

using Names = std::vector<std::string>;

namespace {

GuestKind guests_without(Names keys) {
  GuestKind out{"guests", 4, 1, 1};
  out.without = std::move(keys);
  return out;
}

EatingAnswer answer(const TestKitchen& kitchen, Names without) {
  return eats(guests_without(std::move(without)),
              allergens_of(kitchen.book.recipe("flat bread"), kitchen.book, allergen_rows()));
}

}  // namespace

TEST_CASE("guests eat what is known to be free of what they may not eat") {
  TestKitchen kitchen = supper_kitchen();
  CHECK(answer(kitchen, {"wheat"}).eats == Eats::cannot);
  CHECK(answer(kitchen, {"cereals containing gluten"}).eats == Eats::cannot);
  CHECK(answer(kitchen, {"fish"}).because == Names{"fish"});
  // The garlic of the supper does not state its allergens
  CHECK(answer(kitchen, {"milk"}).eats == Eats::not_known);
  CHECK(answer(kitchen, {"milk"}).because == Names{"garlic"});
  CHECK(answer(kitchen, {}).eats == Eats::can);
  kitchen.book.ingredients.change("garlic",
                                  [&](Ingredient& ingredient) { ingredient.allergens = Names(); });
  CHECK(answer(kitchen, {"milk"}).eats == Eats::can);
  kitchen.book.ingredients.change(
      "garlic", [&](Ingredient& ingredient) { ingredient.may_contain = {"milk"}; });
  CHECK(answer(kitchen, {"milk"}).eats == Eats::may_contain);
}

TEST_CASE("leaving an ingredient out changes who can eat the dish") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.ingredients.change("garlic",
                                  [&](Ingredient& ingredient) { ingredient.allergens = Names(); });
  CHECK(answer(kitchen, {"fish"}).eats == Eats::cannot);
  kitchen.book.recipes.change("anchovy paste", [](Recipe& recipe) {
    std::erase_if(recipe.lines, [](const RecipeLine& line) { return line.name == "anchovy"; });
  });
  CHECK(answer(kitchen, {"fish"}).eats == Eats::can);
}

TEST_CASE("guests for whom no dish is known to be eatable are named") {
  const TestKitchen kitchen = supper_kitchen();
  Event event = supper();
  const ProblemList none = guest_warnings(event, kitchen.book, allergen_rows());
  CHECK(none.all().empty());
  event.guests.push_back(guests_without({"fish"}));
  const ProblemList found = guest_warnings(event, kitchen.book, allergen_rows());
  REQUIRE(found.all().size() == 1);
  CHECK(found.all()[0].id == "nothing-to-eat");
  CHECK(found.all()[0].severity == Severity::warning);
}
