// Lines that are a share of the weight of others.

#include "platewright/recipe/scaled_recipe.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// 10 lb of water that follows the pieces, 8 lb of meat, and salt as a share of some of it.
Recipe brine(std::vector<std::string> of, const char* salt) {
  Recipe out =
      recipe_for("brine", 10, {line("leg", "8 lb"), line("water", "10 lb"), line("salt", salt)});
  out.lines[0].weight = pounds(8);
  out.lines[1].weight = pounds(10);
  out.lines[1].scale = ScalingRule::by_piece;
  out.lines[2].share_of = WeightShare{fraction(1, 20), std::move(of)};
  out.tested = TestedPieces{1, "leg", pounds(8)};
  return out;
}

}  // namespace

TEST_CASE("salt as a share of the water follows the water alone") {
  const Recipe recipe = brine({"water"}, "0.5 lb");
  const ScaledRecipe scaled = scale(recipe, plan_for_pieces(recipe, 2, pounds(12)));
  CHECK(scaled.lines[1].amount.low == amount("20 lb"));
  CHECK(scaled.lines[2].amount.low == amount("1 lb"));
}

// Twice 12 lb of meat with twice 10 lb of water are 44 lb; one twentieth is 2.2 lb.
TEST_CASE("salt as a share of water and meat follows both") {
  const Recipe recipe = brine({"water", "leg"}, "0.9 lb");
  const ScaledRecipe scaled = scale(recipe, plan_for_pieces(recipe, 2, pounds(12)));
  CHECK(scaled.lines[2].amount.low == amount("2.2 lb"));
}
