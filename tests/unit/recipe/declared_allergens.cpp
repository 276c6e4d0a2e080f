// SPDX-License-Identifier: MIT
#include "platewright/recipe/declared_allergens.hpp"

#include "support/allergen_rows.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

using Names = std::vector<std::string>;

namespace {

/// A dish of flour, rye and celery, with a sauce that may hold milk.
TestKitchen kitchen_of_cereals() {
  TestKitchen out;
  const auto add = [&](const char* name, Names allergens, Names traces) {
    Ingredient added = ingredient(name);
    added.allergens = std::move(allergens);
    added.may_contain = std::move(traces);
    out.add(added);
  };
  add("flour", {"wheat"}, {});
  add("rye", {"cereals containing gluten"}, {});
  add("cream", {"milk"}, {});
  add("stock cube", {}, {"milk", "wheat"});
  out.add(recipe_making("gravy", "1 qt", {line("stock cube", "1 oz")}));
  out.add(recipe_for("a dish", 4,
                     {line("flour", "1 lb"), line("rye", "1 lb"), line("gravy", "1 cup")}));
  return out;
}

DeclaredAllergens declared_by(AllergenLaw law, const TestKitchen& kitchen) {
  AllergenTable table = allergen_rows();
  table.go_by(law);
  return declared(allergens_of(kitchen.book.recipe("a dish"), kitchen.book, table), table);
}

}  // namespace

TEST_CASE("wheat does not stand twice, and no ingredient is lost") {
  const auto told = declared_by(AllergenLaw::both, kitchen_of_cereals()).contains;
  REQUIRE(told.size() == 2);
  CHECK(told[0].key == "cereals containing gluten");
  CHECK(told[0].ingredients == Names{"rye"});
  CHECK(told[1].key == "wheat");
  CHECK(told[1].kind_of == Names{"cereals containing gluten"});
  CHECK(told[1].ingredients == Names{"flour"});
}

TEST_CASE("each law has its own list") {
  // 21 U.S.C. 321(qq) knows wheat, and no other cereal; Regulation (EU) 1169/2011, Annex II, knows
  // all cereals containing gluten, by their names.
  const auto us = declared_by(AllergenLaw::us, kitchen_of_cereals()).contains;
  REQUIRE(us.size() == 1);
  CHECK(us[0].key == "wheat");
  CHECK(us[0].kind_of.empty());
  const auto eu = declared_by(AllergenLaw::eu, kitchen_of_cereals()).contains;
  REQUIRE(eu.size() == 2);
  CHECK(eu[1].key == "wheat");
  CHECK(eu[1].kind_of == Names{"cereals containing gluten"});
}

TEST_CASE("what a label warns of comes up through a sub-recipe, unless the dish holds it anyway") {
  TestKitchen kitchen = kitchen_of_cereals();
  const auto told = declared_by(AllergenLaw::both, kitchen).may_contain;
  REQUIRE(told.size() == 1);
  CHECK(told[0].key == "milk");
  CHECK(told[0].ingredients == Names{"stock cube"});
  kitchen.book.recipes.change(
      "a dish", [&](Recipe& recipe) { recipe.lines.push_back(line("cream", "1 cup")); });
  CHECK(declared_by(AllergenLaw::both, kitchen).may_contain.empty());
}

TEST_CASE("every list of allergens is read by its own name") {
  for (const AllergenLaw law : all_allergen_laws) CHECK(allergen_law_from(name_of(law)) == law);
}
