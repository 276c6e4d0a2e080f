// SPDX-License-Identifier: MIT
// Kitchens as cooks name them: spoons and jugs owned, scales, tolerance, rounding.

#include "platewright/kitchen/read_tools.hpp"

#include "platewright/kitchen/kitchen.hpp"
#include "platewright/kitchen/measure_text.hpp"
#include "platewright/quantity/typed_text.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::problem_of;
using platewright::test::unit_table;

namespace {

constexpr MeasuringSystem us_measures = MeasuringSystem::us;
constexpr MeasuringSystem metric = MeasuringSystem::metric;

std::string measured(const char* volume, const std::vector<std::string>& owned,
                     MeasuringSystem system = us_measures) {
  Kitchen kitchen = usual_kitchen(system, unit_table());
  kitchen.measures = read_measures(owned, system, unit_table());
  return kitchen_measure_text(measured_in(read<Volume>(volume, unit_table(), system), kitchen));
}

std::string weighed(const char* weight, const std::vector<std::string>& scale) {
  return kitchen_measure_text(
      weigh_out(read<Mass>(weight, unit_table()), read_scale(scale, us_measures, unit_table())));
}

std::string rounded(const char* amount, const char* rounding,
                    MeasuringSystem system = us_measures) {
  Kitchen kitchen = usual_kitchen(system, unit_table());
  kitchen.rounding = read_rounding(rounding, system, unit_table());
  const Amount asked = read_amount(amount, unit_table(), system);
  return kitchen_measure_text(asked.dimension() == UnitDimension::mass
                                  ? weighed_in(to_mass(asked), kitchen)
                                  : measured_in(to_volume(asked), kitchen));
}

std::string refused(const std::vector<std::string>& owned) {
  return problem_of([&] { read_measures(owned, us_measures, unit_table()); }).id;
}

std::string refused_rounding(const char* text, MeasuringSystem system = us_measures) {
  return problem_of([&] { read_rounding(text, system, unit_table()); }).id;
}

}  // namespace

TEST_CASE("only measures that are owned are used") {
  const std::vector<std::string> set{"1/4 tsp", "1 tsp", "1 tbsp", "1/4 cup", "1/3 cup", "1 cup"};
  CHECK(measured("1 cup 3 tbsp", set) == "1 cup + 3 tbsp");
  CHECK(measured("2/3 cup", set) == "2/3 cup");
  CHECK(measured("1/8 tsp", set) == "1/4 tsp (+100 %)");
  CHECK(measured("7 cups", set) == "7 cups");
  // Without the third of a cup the nearest lies further off.
  CHECK(measured("2/3 cup", {"1 tsp", "1 tbsp", "1/4 cup", "1 cup"}) == "1/2 cup + 2 tbsp + 2 tsp");
  CHECK(measured("1/2 cup", {"1 tbsp"}) == "8 tbsp");
}

TEST_CASE("a jug is read to its marks, and the largest is filled again") {
  const std::vector<std::string> set{"5 mL", "100-1000 mL by 50 mL"};
  CHECK(measured("350 mL", set, metric) == "350 mL");
  CHECK(measured("2.4 L", set, metric) == "2400 mL");
  CHECK(measured("15 mL", set, metric) == "15 mL");
  CHECK(measured("3 qt", {"1 cup", "1-4 qt by 1/2 qt"}) == "3 qt");
  CHECK(measured("7 qt", {"1 cup", "1-4 qt by 1/2 qt"}) == "7 qt");
}

TEST_CASE("nothing need lie between the spoons and a large jug") {
  CHECK(measured("2 qt", {"1 tsp", "1/8 tsp", "1/4 tsp", "1-4 qt by 1/4 qt"}) == "2 qt");
}

TEST_CASE("what is not a measure of a kitchen is refused") {
  CHECK(refused({"1-4 cups"}) == "kitchen-entry-malformed");
  CHECK(refused({"1 cup by 1/4 cup"}) == "kitchen-entry-malformed");
  CHECK(refused({"to taste"}) == "kitchen-entry-malformed");
  CHECK(refused({"0 cups"}) == "kitchen-entry-malformed");
  CHECK(refused({"1 lb"}) == "wrong-dimension");
  CHECK(refused({"100-1000 mL by 50 g"}) == "units-do-not-mix");
  CHECK(refused({"100-1000 mL by 0 mL"}) == "kitchen-measure-unusable");
  CHECK(refused({}) == "kitchen-empty");
}

TEST_CASE("a scale shows what it is said to show") {
  CHECK(weighed("123.4 g", {"5 g"}) == "125 g (+1.3 %)");
  CHECK(weighed("1234 g", {"1 g", "20 g from 1 kg"}) == "1.24 kg (+0.5 %)");
  CHECK(weighed("1234 g", {"20 g from 1 kg", "1 g"}) == "1.24 kg (+0.5 %)");
  CHECK(weighed("33.3 oz", {"1/4 oz"}) == "2 lb 1 1/4 oz (-0.2 %)");
  CHECK(problem_of([] { read_scale({"0 g"}, us_measures, unit_table()); }).id ==
        "number-not-positive");
  CHECK(problem_of([] { read_scale({"1 cup"}, us_measures, unit_table()); }).id ==
        "wrong-dimension");
}

// The steps of the two tables are in tests/reference/kitchen_rounding.cpp, with their sources.
TEST_CASE("the rounding is the one that is named") {
  CHECK(rounded("1.3 oz", "army card") == "1 1/4 oz (-3.8 %)");
  CHECK(rounded("11.3 oz", "army card") == "11 1/4 oz (-0.4 %)");
  CHECK(rounded("11.3 oz", "USDA schools") == "11 1/2 oz (+1.8 %)");
  CHECK(rounded("11.3 oz", "exact") == "11 3/10 oz");
  CHECK(rounded("11.3 oz", "nearest 5 g") == "320 g (-0.1 %)");
  CHECK(rounded("11.3 oz", "nearest 1/2 tsp and 1 oz") == "11 oz (-2.7 %)");
  CHECK(rounded("1 1/4 tsp", "nearest 1/2 tsp and 1 oz") == "1 1/2 tsp (+20 %)");
  // Where nothing is said of capacities they stay the fewest measures.
  CHECK(rounded("19 tbsp", "nearest 5 g") == "1 cup + 3 tbsp");
  CHECK(rounded("19 tbsp", "fewest measures") == "1 cup + 3 tbsp");
  CHECK(rounded("1/3 pt", "exact", MeasuringSystem::imperial) == "6 2/3 fl oz");
  CHECK(rounded("1/3 L", "exact", metric) == "1000/3 mL");
}

TEST_CASE("a rounding that is not known is refused, with help") {
  const Problem problem = problem_of([] { read_rounding("amry card", us_measures, unit_table()); });
  CHECK(problem.id == "rounding-unknown");
  CHECK(problem.remedy == "did you mean \"army card\"?");
  CHECK(refused_rounding("nearest 5 g and 1 oz") == "rounding-unknown");
  CHECK(refused_rounding("nearest 5 min") == "wrong-dimension");
  CHECK(refused_rounding("nearest 0 g") == "number-not-positive");
  CHECK(refused_rounding("army card", metric) == "rounding-other-system");
  CHECK(refused_rounding("usda schools", MeasuringSystem::imperial) == "rounding-other-system");
}

TEST_CASE("a tolerance is a share of at most a half") {
  CHECK(read_tolerance("2 %") == kitchen_tolerance());
  CHECK(read_tolerance("0") == 0);
  CHECK(problem_of([] { read_tolerance("51 %"); }).id == "share-out-of-range");
}
