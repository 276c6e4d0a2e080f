// SPDX-License-Identifier: MIT
// Lines that are a share of the weight of others.

#include "platewright/recipe/scaled_recipe.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// 10 lb of water that follows the pieces, 8 lb of meat, and salt as a share of some of it.
Recipe brine(std::vector<std::string> of) {
  Recipe out = recipe_for("brine", 10,
                          {line("leg", "8 lb"), line("water", "10 lb", ScalingRule::by_piece),
                           line("salt", builders::share_of(fraction(1, 20), std::move(of)))});
  out.tested = TestedPieces{1, "leg", pounds(8)};
  return out;
}

}  // namespace

TEST_CASE("salt as a share of the water follows the water alone") {
  const Recipe recipe = brine({"water"});
  const ScaledRecipe scaled =
      scale(recipe, plan_for_pieces(recipe, 2, no_book, pounds(12)), no_book);
  CHECK(scaled.lines[1].amount.low() == amount("20 lb"));
  CHECK(to_mass(*scaled.lines[2].amount.low()) == pounds(1));
}

// Twice 12 lb of meat with twice 10 lb of water are 44 lb; one twentieth is 2.2 lb.
TEST_CASE("salt as a share of water and meat follows both") {
  const Recipe recipe = brine({"water", "leg"});
  const ScaledRecipe scaled =
      scale(recipe, plan_for_pieces(recipe, 2, no_book, pounds(12)), no_book);
  CHECK(to_mass(*scaled.lines[2].amount.low()) == to_mass(amount("2.2 lb")));
}

TEST_CASE("meat stands for the lines that are cuts, whatever they are called") {
  RecipeBook book;
  Ingredient leg = ingredient("leg");
  leg.is_cut = true;
  book.add(leg);
  const Recipe recipe = brine({"meat"});
  CHECK(to_mass(*tested_amount(recipe.lines[2], recipe, book).low()) == to_mass(amount("0.4 lb")));
}

TEST_CASE("a share of nothing that weighs is a problem, never the factor 1") {
  const Recipe none = brine({"meat"});
  CHECK(problem_of([&] { scale(none, plan_for_factor(none, 10, no_book), no_book); }).id ==
        "share-of-unknown");
  Recipe measured = brine({"water"});
  measured.lines[1] = line("water", "5 qt");
  CHECK(problem_of([&] { tested_amount(measured.lines[2], measured, no_book); }).id ==
        "share-of-unknown");
}
