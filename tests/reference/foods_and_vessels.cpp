// SPDX-License-Identifier: MIT
// The tables of foods and of vessels: how much they cover, that every row has its source, and
// figures of the sources themselves.

#include <set>
#include <string>

#include "platewright/book/tables.hpp"
#include "platewright/number/write.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::the_tables;

namespace {

/// What an amount of a food weighs, in grams.
std::string grams(const char* amount, const char* food) {
  const IngredientWeights* weights = the_tables().weights.find(food);
  if (weights == nullptr) return "not known";
  const Amount asked = read_amount(amount, the_tables().units, MeasuringSystem::us);
  return as_exact(weight_of(asked, *weights).in(units::gram));
}

Rational millilitres(const std::string& volume) {
  return to_volume(read_amount(volume, the_tables().units, MeasuringSystem::us))
      .in(units::millilitre);
}

}  // namespace

TEST_CASE("at least 450 ingredients have a weight, whatever their preparation") {
  std::set<std::string> ingredients;
  for (const auto& [plain, weights] : the_tables().weights.all()) {
    ingredients.insert(plain.substr(0, plain.find(',')));
  }
  CHECK(ingredients.size() >= 450);
}

TEST_CASE("every weight has its source, and the USDA's its food and its row") {
  for (const auto& [plain, weights] : the_tables().weights.all()) {
    for (const MeasureWeight& row : weights.rows) {
      INFO(plain);
      CHECK_FALSE(row.source.empty());
      CHECK(row.weighs > Mass());
      CHECK(row.measure.number > 0);
      if (row.source == "USDA SR28") CHECK(row.row.substr(0, 4) == "NDB ");
    }
  }
}

// USDA National Nutrient Database for Standard Reference, release 28, 2016; NDB numbers beside.
TEST_CASE("weights as the USDA prints them") {
  CHECK(grams("1 cup", "flour, all-purpose") == "125");  // 20081
  CHECK(grams("1 cup", "honey") == "339");               // 19296
  CHECK(grams("1 tbsp", "honey") == "21");
  CHECK(grams("1 tbsp", "butter") == "14.2");  // 01145
  CHECK(grams("1 cup", "butter") == "227");
  CHECK(grams("1 clove", "garlic") == "3");          // 11215
  CHECK(grams("1 cup", "onion, chopped") == "160");  // 11282
  CHECK(grams("1 cup", "onion, sliced") == "115");
  CHECK(grams("1 cup", "sugar") == "200");  // 19335
}

TEST_CASE("what is not in the table has no weight") {
  CHECK(grams("1 cup", "moon dust") == "not known");
}

// ICN, Basics at a Glance, prints scoops that the rule (a quart over the number) does not always
// give: No. 10 holds 3/8 cup there and 2/5 by the rule.
TEST_CASE("scoops and ladles have what is printed and what the rule gives") {
  std::size_t both = 0;
  for (const Vessel& vessel : the_tables().vessels) {
    INFO(vessel.name);
    CHECK_FALSE(vessel.source.empty());
    CHECK(vessel.capacity.empty() == (vessel.kind == "sheet pan"));
    if (vessel.printed.empty() || vessel.by_rule.empty()) continue;
    ++both;
    const Rational printed = millilitres(vessel.printed);
    const Rational by_rule = millilitres(vessel.by_rule);
    CHECK(printed / by_rule > fraction(9, 10));
    CHECK(printed / by_rule < fraction(11, 10));
    if (vessel.name == "No. 10 scoop") CHECK(by_rule / printed == fraction(16, 15));
    if (vessel.kind == "ladle") CHECK(printed == by_rule);
  }
  CHECK(both == 20);
}

TEST_CASE("a can's contents, water capacity and drained weight are different rows") {
  std::set<std::string> kinds;
  std::set<std::string> capacities;
  for (const Vessel& vessel : the_tables().vessels) {
    kinds.insert(vessel.kind);
    if (vessel.kind == "can") capacities.insert(vessel.capacity);
  }
  CHECK(capacities.count("contents") == 1);
  CHECK(capacities.count("water capacity") == 1);
  CHECK(kinds == std::set<std::string>{"can", "gastronorm pan", "ladle", "portion server", "scoop",
                                       "sheet pan", "steam-table pan"});
}
