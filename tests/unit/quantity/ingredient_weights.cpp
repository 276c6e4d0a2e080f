// SPDX-License-Identifier: MIT
// From measures to weight and back, through an ingredient's own figures.

#include "platewright/quantity/ingredient_weights.hpp"

#include "platewright/quantity/read_amount.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

MeasureWeight row(const char* measure, const Rational& weighs) {
  MeasureWeight out = weighing(measure, grams(weighs));
  out.own = false;
  return out;
}

/// A spoon and a cup that do not agree, as printed tables do not.
IngredientWeights flour() {
  return {"flour", {row("1 tbsp", 8), row("1 cup", 125)}};
}

Rational in_grams(const char* text, const IngredientWeights& weights) {
  return weight_of(amount(text), weights).in(units::gram);
}

Amount converted(const char* text, const char* unit, const IngredientWeights& weights) {
  return convert(amount(text), unit_table().find(unit, MeasuringSystem::us), weights).amount;
}

}  // namespace

TEST_CASE("a weight needs no figures") {
  CHECK(converted("1 lb", "g", {"anything", {}}).number == fraction(45359237, 100000));
  CHECK(converted("1 lb", "oz", {"anything", {}}).number == 16);
}

TEST_CASE("of several measures the one nearest in size is taken") {
  CHECK(in_grams("2 tbsp", flour()) == 16);
  CHECK(in_grams("2 cups", flour()) == 250);
  CHECK(in_grams("3 tbsp", flour()) == 24);
  CHECK(in_grams("1/2 cup", flour()) == fraction(125, 2));
  CHECK(in_grams("1 gal", flour()) == 2000);
}

// A tablespoon and a cup are 16 apart: at 4 tablespoons both are as near, and the first row wins.
TEST_CASE("a measure half way between two rows takes the first") {
  CHECK(in_grams("4 tbsp", flour()) == 32);
  CHECK(in_grams("5 tbsp", flour()) == fraction(625, 16));
}

TEST_CASE("the book's own weighing wins, however far in size") {
  IngredientWeights weights = flour();
  weights.rows.push_back(weighing("1 qt", grams(560)));
  CHECK(in_grams("1 cup", weights) == 140);
  CHECK(in_grams("1 tbsp", weights) == fraction(35, 4));
}

TEST_CASE("weight to capacity and on to pieces") {
  IngredientWeights weights = flour();
  weights.rows.push_back(row("1 clove", 3));
  CHECK(converted("250 g", "cup", {"flour", {row("1 cup", 125)}}).number == 2);
  CHECK(converted("1 cup", "clove", weights).number == fraction(125, 3));
  const Conversion both =
      convert(amount("1 cup"), unit_table().find("clove", MeasuringSystem::us), weights);
  CHECK(both.through.size() == 2);
}

TEST_CASE("of several sizes of a piece the usual one is meant") {
  MeasureWeight small = row("1 each", 70);
  small.usual = false;
  MeasureWeight medium = row("1 each", 110);
  const IngredientWeights onion{"onion", {small, medium}};
  CHECK(in_grams("3", onion) == 330);
}

TEST_CASE("there is no default density") {
  const Problem problem = problem_of([] { in_grams("1 cup", {"gravel", {}}); });
  CHECK(problem.id == "density-missing");
  CHECK(problem.found.find("\"gravel\"") != std::string::npos);
  CHECK(problem.remedy.find("weighs: {1 cup: 125 g}") != std::string::npos);
  CHECK(problem_of([] { converted("100 g", "cup", {"gravel", {}}); }).id == "density-missing");
}

TEST_CASE("a missing weight of a piece names what is known, each kind once") {
  const IngredientWeights garlic{"garlic",
                                 {row("1 clove", 3), row("1 clove", 5), row("1 head", 50)}};
  const Problem problem = problem_of([&] { in_grams("1 bunch", garlic); });
  CHECK(problem.id == "piece-weight-missing");
  CHECK(problem.found == "no weight of one bunch of \"garlic\" (known: clove, head)");
}

TEST_CASE("a length is no weight, whatever is known") {
  CHECK(problem_of([] { in_grams("3 in", flour()); }).id == "wrong-dimension");
  CHECK(problem_of([] { converted("3 in", "cup", flour()); }).id == "units-do-not-mix");
  CHECK(problem_of([] { converted("3 cups", "inch", flour()); }).id == "units-do-not-mix");
}

TEST_CASE("weights by name and by synonym") {
  WeightTable table;
  table.add("all-purpose flour", {"plain flour"}, row("1 cup", 125));
  table.add("all-purpose flour", {}, row("1 tbsp", 8));
  REQUIRE(table.find("All-Purpose Flour") != nullptr);
  CHECK(table.find("plain flour")->rows.size() == 2);
  CHECK(table.find("rye flour") == nullptr);
}

TEST_CASE("a synonym of the book's own row wins") {
  WeightTable table;
  table.add("all-purpose flour", {"plain flour"}, row("1 cup", 125));
  table.add("salt", {}, row("1 cup", 292));
  table.add("our flour", {"plain flour", "salt"}, weighing("1 cup", grams(140)));
  CHECK(table.find("plain flour")->name == "our flour");
  CHECK(table.find("salt")->name == "our flour");
  CHECK(table.find("all-purpose flour")->name == "all-purpose flour");
}
