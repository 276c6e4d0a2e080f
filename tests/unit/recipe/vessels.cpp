// SPDX-License-Identifier: MIT
// Vessels and batches, and the lines that follow them.

#include "platewright/recipe/cover_check.hpp"
#include "platewright/recipe/scaled_recipe.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Volume litres(const Rational& count) {
  return Volume::of(count, units::litre);
}

/// One leg of 8 lb, which takes up 4 L, in a tub of 10 L.
Recipe brined() {
  Recipe out = recipe_for(
      "brined leg", 10,
      {line("leg", "8 lb"), line("brine", "6 L", ScalingRule::by_cover),
       line("oil", "1 tbsp", ScalingRule::by_pan), line("wine", "1 cup", ScalingRule::by_batch)});
  out.tested = TestedPieces{1, "leg", pounds(8)};
  out.vessel = RecipeVessel{"tub", litres(10), Rational(1), ""};
  return out;
}

const RecipeBook legs = two_pounds_a_litre({"leg"});

RecipeVessel tub_for_three() {
  return {"large tub", litres(20), Rational(3), ""};
}

}  // namespace

TEST_CASE("the tested batch stays as it is written") {
  const Recipe recipe = brined();
  const ScaledRecipe same = scale(recipe, plan_for_factor(recipe, 1, legs), legs);
  for (const ScaledLine& line : same.lines) CHECK(line.amount == line.line->amount);
  CHECK(same.plan.vessels->count == 1);
  CHECK_FALSE(same.plan.cover_by_factor);
}

TEST_CASE("vessels are whole, rounded up") {
  Recipe recipe = brined();
  recipe.vessel->holds = 3;
  recipe.vessel->volume = litres(20);
  CHECK(plan_for_pieces(recipe, 9, legs).vessels->count == 3);
  CHECK(plan_for_pieces(recipe, 10, legs).vessels->count == 4);
  CHECK(plan_for_pieces(recipe, 10, legs).vessel_factor == 4);
}

// Ten legs of 4 L in four tubs of 20 L leave 40 L; the tested leg left 6 L of 10.
TEST_CASE("what covers the meat follows the volume that is left") {
  const Recipe recipe = brined();
  const ScalePlan plan =
      in_vessels(recipe, plan_for_pieces(recipe, 10, legs), tub_for_three(), legs);
  CHECK(plan.vessels->count == 4);
  CHECK(plan.cover_factor == fraction(40, 6));
  CHECK(scale(recipe, plan, legs).lines[1].amount.low() == amount("40 L"));
}

TEST_CASE("what covers must fit its vessels, less the meat where that is known") {
  const Recipe recipe = brined();
  CHECK_FALSE(
      overflow_of(scale(recipe, plan_for_pieces(recipe, 10, legs), legs), legs).has_value());
  Recipe too_much = brined();
  too_much.lines[1] = line("brine", "7 L", ScalingRule::by_cover);
  const auto overflow =
      overflow_of(scale(too_much, plan_for_pieces(too_much, 2, legs), legs), legs);
  REQUIRE(overflow.has_value());
  CHECK(overflow->liquid == litres(7));
  CHECK(overflow->room == litres(6));
  CHECK(overflow->less_the_meat);
  // A little salt in it does not count.
  Recipe salted = brined();
  salted.lines.push_back(line("salt", "1 cup", ScalingRule::by_cover));
  CHECK_FALSE(
      overflow_of(scale(salted, plan_for_pieces(salted, 10, legs), legs), legs).has_value());
}

TEST_CASE("what is covered by the factor is held against the vessels as they are") {
  RecipeBook book;
  Recipe recipe = brined();
  recipe.lines[1] = line("brine", "6 kg", ScalingRule::by_cover);
  const auto overflow_in = [&](const RecipeVessel& vessel) {
    const ScalePlan ten = plan_for_pieces(recipe, 10, book);
    const ScaledRecipe scaled = scale(recipe, in_vessels(recipe, ten, vessel, book), book);
    CHECK(scaled.plan.cover_by_factor);
    return overflow_of(scaled, book);
  };
  CHECK_FALSE(overflow_in(tub_for_three()));  // no figure makes a weight a capacity
  Ingredient brine = ingredient("brine");
  brine.weights.rows = {weighing("1 L", grams(1000))};
  book.add(brine);
  CHECK_FALSE(overflow_in(tub_for_three()));  // 60 L in four tubs of 20 L
  const auto overflow = overflow_in({"small tub", litres(12), Rational(3), ""});
  REQUIRE(overflow.has_value());
  CHECK(overflow->liquid == litres(18));
  CHECK(overflow->room == litres(12));
  CHECK_FALSE(overflow->less_the_meat);
}

TEST_CASE("heavier meat leaves less room in the same vessel") {
  const Recipe recipe = brined();
  CHECK(plan_for_pieces(recipe, 1, legs, pounds(10)).cover_factor == fraction(5, 6));
}

TEST_CASE("what covers follows the factor where a volume is not known") {
  Recipe recipe = brined();
  const ScalePlan plan = plan_for_pieces(recipe, 10, no_book);
  CHECK(plan.cover_by_factor);
  CHECK(plan.cover_factor == plan.factor);
}

TEST_CASE("meat that fills the vessel alone is refused") {
  const Recipe recipe = brined();
  const auto plan = [&] { return plan_for_pieces(recipe, 1, legs, pounds(20)); };
  CHECK(problem_of(plan).id == "vessel-too-small");
}

TEST_CASE("a roast that nothing covers may stand out of its pan") {
  Recipe recipe = brined();
  recipe.lines.erase(recipe.lines.begin() + 1);
  const ScalePlan plan = plan_for_pieces(recipe, 2, legs, pounds(40));
  CHECK(plan.vessels->count == 2);
  CHECK_FALSE(overflow_of(scale(recipe, plan, legs), legs));
}

TEST_CASE("where the meat alone fills a vessel no room is left for what covers it") {
  // The tested vessel has no size, so that the factor decides.
  Recipe recipe = brined();
  recipe.vessel->volume.reset();
  const RecipeVessel small{"small tub", litres(3), Rational(1), ""};
  const ScalePlan plan = in_vessels(recipe, plan_for_pieces(recipe, 2, legs), small, legs);
  const auto overflow = overflow_of(scale(recipe, plan, legs), legs);
  REQUIRE(overflow);
  CHECK(overflow->room == Volume());
}

TEST_CASE("what counts the vessels is named") {
  Recipe gratin = recipe_for("gratin", 48, {line("butter", "1 oz")});
  RecipeVessel pan{"hotel pan", litres(13), std::nullopt, ""};
  pan.bottom = PanBottom{Length::of(12, units::inch), Length::of(20, units::inch)};
  RecipeVessel sheet{"sheet", std::nullopt, std::nullopt, ""};
  sheet.bottom = PanBottom{Length::of(18, units::inch), Length::of(26, units::inch)};
  gratin.vessel = sheet;
  CHECK(counted_by(gratin, pan) == CountedBy::bottom);
  CHECK_FALSE(counted_by(gratin, sheet));
  gratin.vessel = pan;
  CHECK(counted_by(gratin, RecipeVessel{"tub", litres(20), std::nullopt, ""}) == CountedBy::volume);
  CHECK_FALSE(counted_by(gratin, RecipeVessel{"tub", litres(20), Rational(12), ""}));
}

TEST_CASE("a vessel holds the tested batch where the cook does not say") {
  Recipe recipe = recipe_for("gratin", 12, {line("butter", "1 oz", ScalingRule::by_pan)});
  recipe.vessel = RecipeVessel{"hotel pan", std::nullopt, std::nullopt, ""};
  const ScaledRecipe scaled = scale(recipe, plan_for_portions(recipe, 30, legs), legs);
  CHECK(scaled.plan.vessels->count == 3);
  CHECK(scaled.lines[0].amount.low() == amount("3 oz"));
}

TEST_CASE("batches are counted by the largest that is made at once") {
  Recipe recipe = recipe_for("dough", 10, {line("oil", "1 tbsp", ScalingRule::by_batch)});
  CHECK(plan_for_factor(recipe, fraction(7, 2), legs).batches.count == 4);
  recipe.largest_batch = 3;
  CHECK(plan_for_factor(recipe, fraction(7, 2), legs).batches.count == 2);
  CHECK(plan_for_factor(recipe, 3, legs).batch_factor == 1);
  recipe.largest_batch = fraction(1, 2);
  CHECK(plan_for_factor(recipe, 1, legs).batches.count == 2);
  CHECK(plan_for_factor(recipe, 2, legs).batch_factor == 2);
}

TEST_CASE("a recipe of whole batches is never made in part") {
  Recipe recipe = recipe_for("pastry", 10, {line("flour", "1 lb")});
  recipe.whole_batches = true;
  const ScalePlan plan = plan_for_portions(recipe, 25, legs);
  CHECK(plan.asked == fraction(5, 2));
  CHECK(plan.factor == 3);
  CHECK(plan.rounded_up);
  CHECK(plan.portions == Rational(30));
}

TEST_CASE("a line by pan or by cover needs a vessel") {
  for (const ScalingRule rule : {ScalingRule::by_pan, ScalingRule::by_cover}) {
    const Recipe recipe = recipe_for("roast", 10, {line("oil", "1 tbsp", rule)});
    CHECK(problem_of([&] { scale(recipe, plan_for_factor(recipe, 2, legs), legs); }).id ==
          "vessel-missing");
  }
}

TEST_CASE("what is lost of a recipe is made as well") {
  Recipe stock = recipe_making("stock", "1 gal", {line("bones", "8 lb")});
  stock.lost = fraction(1, 5);
  CHECK(batches_for(stock, amount("2 gal")) == fraction(5, 2));
}

namespace {

/// 75 L of soup in 300 portions.
Recipe pot_of_soup() {
  Recipe out = recipe_for("soup", 300, {line("stock", "60 L")});
  out.makes.portion = amount("250 mL");
  return out;
}

Rational pans_for(const Recipe& recipe, const RecipeVessel& vessel) {
  return in_vessels(recipe, plan_for_factor(recipe, 1, no_book), vessel, no_book).vessels->count;
}

RecipeVessel of_litres(const Rational& count, const Rational& fill = 1) {
  RecipeVessel out{"pan", litres(count), std::nullopt, ""};
  out.fill = fill;
  return out;
}

RecipeVessel tray(const Rational& square_inches) {
  RecipeVessel out{"tray", std::nullopt, std::nullopt, ""};
  out.bottom = PanBottom{Length::of(1, units::inch), Length::of(square_inches, units::inch)};
  return out;
}

}  // namespace

TEST_CASE("pans are counted by the volume that they are filled to") {
  CHECK(pans_for(pot_of_soup(), of_litres(fraction(37, 5))) == 11);
  CHECK(pans_for(pot_of_soup(), of_litres(25)) == 3);
  CHECK(pans_for(pot_of_soup(), of_litres(80)) == 1);
  CHECK(pans_for(pot_of_soup(), of_litres(80, usual_fill())) == 2);
}

TEST_CASE("trays are counted by their bottom") {
  Recipe gratin = recipe_for("gratin", 48, {line("butter", "1 oz", ScalingRule::by_pan)});
  gratin.vessel = tray(468);
  CHECK(pans_for(gratin, tray(468)) == 1);
  CHECK(pans_for(gratin, tray(234)) == 2);
  CHECK(pans_for(gratin, tray(117)) == 4);
  const ScalePlan quarters =
      in_vessels(gratin, plan_for_factor(gratin, 1, no_book), tray(117), no_book);
  CHECK(quarters.vessels->parts == std::vector<FilledAlike>{{4, 12}});
  CHECK(scale(gratin, quarters, no_book).lines[0].amount.low() == amount("4 oz"));
}

TEST_CASE("heavier pieces take more of a vessel, and a smaller vessel takes fewer") {
  Recipe legs_in_pans = recipe_for("legs", 20, {line("leg", "16 lb")});
  legs_in_pans.tested = TestedPieces{2, "leg", pounds(8)};
  legs_in_pans.vessel = RecipeVessel{"pan", litres(20), Rational(4), ""};
  const auto count = [&](const RecipeVessel& vessel, const Mass& weight) {
    const ScalePlan plan = plan_for_pieces(legs_in_pans, 12, no_book, weight);
    return in_vessels(legs_in_pans, plan, vessel, no_book).vessels->count;
  };
  CHECK(count(of_litres(20), pounds(8)) == 3);
  CHECK(count(of_litres(10), pounds(8)) == 6);
  CHECK(count(of_litres(20), pounds(12)) == 6);
  CHECK(problem_of([&] { count(of_litres(4), pounds(8)); }).id == "vessel-below-a-piece");
}

TEST_CASE("a vessel of no size that says nothing of its content is refused") {
  const RecipeVessel pot{"stockpot", std::nullopt, std::nullopt, ""};
  CHECK(problem_of([&] { pans_for(pot_of_soup(), pot); }).id == "vessel-size-unknown");
  CHECK(problem_of([&] { pans_for(pot_of_soup(), tray(468)); }).id == "vessel-size-unknown");
  RecipeVessel of_sixty = pot;
  of_sixty.holds = 60;
  CHECK(pans_for(pot_of_soup(), of_sixty) == 5);
}

TEST_CASE("more soup than the fullest vessel takes is said") {
  RecipeVessel small = of_litres(10);
  small.holds = 60;
  const Recipe recipe = pot_of_soup();
  const auto overflow = overflow_of(
      scale(recipe, in_vessels(recipe, plan_for_factor(recipe, 1, no_book), small, no_book),
            no_book),
      no_book);
  REQUIRE(overflow);
  CHECK_FALSE(overflow->covers);
  CHECK(overflow->liquid == litres(15));
  CHECK(overflow->room == litres(10));
}
