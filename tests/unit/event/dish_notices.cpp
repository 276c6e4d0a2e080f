// SPDX-License-Identifier: MIT
#include "platewright/event/dish_notices.hpp"

#include "support/allergen_rows.hpp"
#include "support/catch.hpp"
#include "support/safety_rows.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::vector<DishNotice> notices_for(const Event& event, const TestKitchen& kitchen) {
  return dish_notices(event, kitchen.book, allergen_rows(), safety_rows());
}

}  // namespace

TEST_CASE("every dish has its allergens, and what the book does not say") {
  const auto notices = notices_for(supper(), supper_kitchen());
  REQUIRE(notices.size() == 2);
  CHECK(notices[1].dish == "flat bread");
  REQUIRE(notices[1].allergens.found.size() == 3);
  CHECK(notices[1].allergens.found[1].key == "fish");
  CHECK(notices[1].allergens.not_stated == std::vector<std::string>{"garlic"});
  CHECK(notices[1].undercooked.empty());
}

TEST_CASE("a dish below the minimum is undercooked") {
  // FDA Food Code 2022, 3-401.11(A)(1): 145 F; the lamb comes out at 130 F.
  const auto notices = notices_for(supper(), supper_kitchen());
  REQUIRE(notices[0].undercooked.size() == 1);
  const UndercookedFood& lamb = notices[0].undercooked[0];
  CHECK(lamb.ingredients == std::vector<std::string>{"lamb leg"});
  CHECK(lamb.check.cook_to->at == Temperature::fahrenheit(145));
  CHECK(lamb.check.advisory == Advisory::unless_held);
}

TEST_CASE("a dish at the minimum, or of unknown food, is not called undercooked") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.recipes.change(
      "roast lamb", [&](Recipe& recipe) { recipe.oven[1].until = Temperature::fahrenheit(145); });
  CHECK(notices_for(supper(), kitchen)[0].undercooked.empty());
  kitchen.book.ingredients.change("lamb leg",
                                  [&](Ingredient& ingredient) { ingredient.safety.reset(); });
  const auto notices = notices_for(supper(), kitchen);
  CHECK(notices[0].undercooked.empty());
  REQUIRE(notices[0].not_known.size() == 1);
  CHECK(notices[0].not_known[0].pull == Temperature::fahrenheit(145));
}

TEST_CASE("a dish that stands twice on the menu is told once, with what it is made of") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.recipes.change("flat bread", [&](Recipe& recipe) {
    recipe.lines.push_back(line("roast lamb", "1/10 each"));
  });
  Event event = supper();
  event.menu = {{"flat bread", 1, {}}, {"flat bread", 1, {}}};
  const auto notices = notices_for(event, kitchen);
  REQUIRE(notices.size() == 1);
  CHECK(notices[0].undercooked.size() == 1);
}
