// SPDX-License-Identifier: MIT
// A capacity in the fewest measures that a kitchen owns. The expected texts follow from the sizes
// of the units and the sets' own lists.

#include "platewright/kitchen/measure.hpp"

#include <string>

#include "platewright/kitchen/measure_text.hpp"
#include "platewright/kitchen/usual_measures.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

KitchenMeasure us(const Rational& teaspoons, const Rational& tolerance = kitchen_tolerance()) {
  return kitchen_measure(Volume::of(teaspoons, units::us_teaspoon), us_kitchen(unit_table()),
                         tolerance);
}

std::string us_text(const Rational& teaspoons) {
  return kitchen_measure_text(us(teaspoons));
}

std::string metric_text(const Rational& ml) {
  return kitchen_measure_text(
      kitchen_measure(Volume::of(ml, units::millilitre), metric_kitchen(unit_table())));
}

}  // namespace

TEST_CASE("an exact sum has the fewest terms and no error") {
  CHECK(us_text(33) == "2/3 cup + 1 tsp");
  CHECK(us_text(fraction(9, 4)) == "2 1/4 tsp");
  CHECK(us_text(fraction(1, 8)) == "1/8 tsp");
  CHECK(us_text(3) == "1 tbsp");
  CHECK(us_text(12) == "1/4 cup");
  CHECK(us_text(16) == "1/3 cup");
  CHECK(us_text(96) == "2 cups");
  CHECK(us_text(40) == "3/4 cup + 1 tbsp + 1 tsp");
  CHECK(us_text(288) == "1 1/2 qt");
  CHECK(us_text(768 * 37) == "37 gal");
}

TEST_CASE("an inexact sum shows its signed error to a tenth of a per cent") {
  CHECK(us_text(fraction(228, 100)) == "2 1/4 tsp (-1.3 %)");
  CHECK(us_text(fraction(222, 100)) == "2 1/4 tsp (+1.4 %)");
  const KitchenMeasure measure = us(fraction(228, 100));
  CHECK(measure.error() == fraction(-1, 76));
  CHECK_FALSE(measure.nearest_only);
}

TEST_CASE("an error that rounds to nothing is not written, and stays in the value") {
  const KitchenMeasure measure = us(fraction(2251, 1000));
  CHECK(kitchen_measure_text(measure) == "2 1/4 tsp");
  CHECK(measure.error() == fraction(-1, 2251));
}

TEST_CASE("more terms are taken only where fewer leave the tolerance") {
  // 10 5/8 tbsp: 2/3 cup is 0.4 % too much.
  CHECK(us_text(fraction(255, 8)) == "2/3 cup (+0.4 %)");
  CHECK(us(33, 0).parts.size() == 2);
  CHECK(us(33, fraction(4, 100)).parts.size() == 1);
}

TEST_CASE("of sums equally near the one with fewer marks comes first, then with fewer fillings") {
  // 12 1/2 qt, and 1 3/4 gal.
  CHECK(us_text(192 * 12 + 96) == "3 gal + 2 cups");
  CHECK(us_text(192 * 7) == "1 gal + 3 qt");
  CHECK(us_text(192 * 10) == "2 1/2 gal");
  CHECK(us_text(96 * 15) == "1 gal + 3 1/2 qt");
  // 11 tablespoons are also 1/2 cup and 3 tbsp: four fillings, not two.
  CHECK(us_text(33) == "2/3 cup + 1 tsp");
  // 3 1/8 cups lie half-way between 3 and 3 1/4.
  CHECK(us(150, fraction(5, 100)).parts.front().amount.number == 3);
}

TEST_CASE("of sums that are as much work the one in larger units comes first") {
  // 10 imperial fluid ounces are half a pint.
  const KitchenMeasure half_pint =
      kitchen_measure(Volume::of(10, units::imperial_fluid_ounce), imperial_kitchen(unit_table()));
  CHECK(kitchen_measure_text(half_pint) == "1/2 pt");
}

TEST_CASE("less than the smallest spoon is the smallest spoon, and says so") {
  const KitchenMeasure measure = us(fraction(1, 100));
  CHECK(measure.nearest_only);
  CHECK(kitchen_measure_text(measure) == "1/8 tsp (+1150 %)");
}

TEST_CASE("what no sum reaches within the tolerance is the nearest, and says so") {
  const KitchenMeasure measure = us(fraction(384, 100));
  CHECK(measure.nearest_only);
  CHECK(kitchen_parts_text(measure) == "1 tbsp + 3/4 tsp");
}

TEST_CASE("a lake is measured as fast as a spoon") {
  const Rational gallons = power_of_ten(15);
  CHECK(us_text(gallons * 768) == "1000000000000000 gal");
  CHECK(kitchen_parts_text(us(gallons * 768 + fraction(1, 3), 0)) ==
        "1000000000000000 gal + 1/4 tsp");
}

TEST_CASE("nothing is nothing of the smallest measure") {
  CHECK(us_text(0) == "0 tsp");
  CHECK(us(0).error() == 0);
}

TEST_CASE("a negative capacity or tolerance is refused") {
  CHECK_THROWS_AS(us(-1), Failure);
  CHECK_THROWS_AS(us(1, fraction(-1, 100)), Failure);
}

TEST_CASE("metric measures are spoons, a jug and litres") {
  CHECK(metric_text(fraction(5, 2)) == "1/2 tsp");
  CHECK(metric_text(20) == "1 tbsp + 1 tsp");
  CHECK(metric_text(60) == "60 mL");
  CHECK(metric_text(165) == "150 mL + 1 tbsp");
  CHECK(metric_text(fraction(12341, 10)) == "1.25 L (+1.3 %)");
}

TEST_CASE("an Australian tablespoon is 20 mL") {
  const KitchenSet set = kitchen_of(MeasuringSystem::australian, unit_table());
  CHECK(kitchen_measure_text(kitchen_measure(Volume::of(20, units::millilitre), set)) == "1 tbsp");
  CHECK(kitchen_measure_text(kitchen_measure(Volume::of(35, units::millilitre), set)) ==
        "1 tbsp + 3 tsp");
}
