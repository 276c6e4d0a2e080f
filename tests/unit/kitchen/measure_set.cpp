// SPDX-License-Identifier: MIT
// The measures that a kitchen is said to own: what is refused, how they are ordered.

#include "platewright/kitchen/measure_set.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "platewright/kitchen/measure.hpp"
#include "platewright/kitchen/measure_text.hpp"
#include "platewright/kitchen/usual_measures.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

Unit us_unit(const char* name) {
  return unit_table().find(name, MeasuringSystem::us);
}

std::string refused(const KitchenTool& tool) {
  try {
    const KitchenSet set({tool});
  } catch (const Failure& failure) {
    return failure.problem().id + ": " + failure.problem().found;
  }
  return "accepted";
}

}  // namespace

TEST_CASE("the numbers of a tool are its steps and marks within its range") {
  const Rational quarter = fraction(1, 4);
  const KitchenTool cups{us_unit("cup"), quarter, fraction(15, 4), 1, {quarter, fraction(1, 3)}};
  CHECK(cups.at_or_below(fraction(1, 5)) == std::nullopt);
  CHECK(cups.at_or_below(fraction(2, 7)) == quarter);
  CHECK(cups.at_or_below(fraction(5, 2)) == fraction(7, 3));
  CHECK(cups.at_or_below(100) == fraction(13, 4) + fraction(1, 12));
  CHECK(cups.at_or_above(0) == quarter);
  CHECK(cups.at_or_above(fraction(2, 7)) == fraction(1, 3));
  CHECK(cups.at_or_above(fraction(5, 2)) == Rational(3));
  CHECK(cups.at_or_above(fraction(7, 2)) == std::nullopt);
  CHECK(cups.before(1) == fraction(1, 3));
  CHECK(cups.before(fraction(4, 3)) == fraction(5, 4));
  CHECK(cups.before(quarter) == std::nullopt);
  CHECK(cups.before(100) == fraction(10, 3));
}

TEST_CASE("a tool that can measure nothing is refused with its reason") {
  const Unit cup = us_unit("cup");
  CHECK(refused({us_unit("oz"), 1, 3, 1, {}}).rfind("wrong-dimension", 0) == 0);
  CHECK(
      refused({cup, 1, 3, 0, {}}) ==
      "kitchen-measure-unusable: the measure \"US cup\" of the kitchen (its step is not above 0)");
  CHECK(refused({cup, 0, 3, 1, {}}).find("smallest number") != std::string::npos);
  CHECK(refused({cup, 1, 3, 1, {1}}).find("a mark") != std::string::npos);
  CHECK(refused({cup, 1, 3, 1, {0}}).find("a mark") != std::string::npos);
  CHECK(refused({cup, 3, 2, 1, {}}).find("ends before") != std::string::npos);
  CHECK(refused({cup, fraction(11, 10), fraction(12, 10), 1, {}}).find("ends before") !=
        std::string::npos);
  CHECK(refused({cup, 1, 3, fraction(1, 10000), {}}).find("10000 marks") != std::string::npos);
  CHECK(refused({cup, 1, {}, fraction(1, 10001), {}}).find("10000 marks") != std::string::npos);
  CHECK(refused({cup, 1, 3, 1, {}}) == "accepted");
}

TEST_CASE("a kitchen without measures is refused") {
  CHECK_THROWS_AS(KitchenSet({}), Failure);
}

TEST_CASE("the tools of a set stand in one order, however they are given") {
  std::vector<KitchenTool> tools = metric_kitchen(unit_table()).tools();
  std::reverse(tools.begin(), tools.end());
  CHECK(KitchenSet(tools) == metric_kitchen(unit_table()));
  CHECK(tools.back().unit.name() == "litre");
  CHECK(tools.front().unit.name() == "metric teaspoon");
}

TEST_CASE("a smaller unit ends below the largest, whatever it says") {
  const KitchenSet set({{us_unit("qt"), 1, {}, 1, {}}, {us_unit("cup"), 1, {}, 1, {}}});
  CHECK(set.tools().back().to == Rational(3));
  const Volume seven_cups = Volume::of(7, units::us_cup);
  CHECK(kitchen_measure_text(kitchen_measure(seven_cups, set)) == "1 qt + 3 cups");
}

TEST_CASE("a kitchen that owns half a tablespoon uses it") {
  std::vector<KitchenTool> tools = us_kitchen(unit_table()).tools();
  for (KitchenTool& tool : tools) {
    if (tool.unit.name() != "US tablespoon") continue;
    tool.from = fraction(1, 2);
    tool.marks = {fraction(1, 2)};
  }
  const Volume half = Volume::of(fraction(3, 2), units::us_teaspoon);
  CHECK(kitchen_measure_text(kitchen_measure(half, KitchenSet(tools))) == "1/2 tbsp");
  CHECK(kitchen_measure_text(kitchen_measure(half, us_kitchen(unit_table()))) == "1 1/2 tsp");
}
