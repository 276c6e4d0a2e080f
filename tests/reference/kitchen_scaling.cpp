// SPDX-License-Identifier: MIT
// Scaled amounts in kitchen measures, against what published recipes and tables print.

#include <array>
#include <string>

#include "platewright/kitchen/measure.hpp"
#include "platewright/kitchen/measure_text.hpp"
#include "platewright/kitchen/scales.hpp"
#include "platewright/kitchen/usual_measures.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

std::string weight(const Rational& ounces) {
  const KitchenRule rule{usda_schools_weights(), pounds_and_ounces(unit_table())};
  return kitchen_measure_text(weigh_out(Mass::of(ounces, units::ounce), rule));
}

std::string capacity(const Rational& count, const NamedUnit<VolumeDimension>& unit) {
  return kitchen_measure_text(kitchen_measure(Volume::of(count, unit), us_kitchen(unit_table())));
}

}  // namespace

// USDA Recipes for Schools, factor method: 50 servings made for 25 and for 100.
TEST_CASE("a school recipe for 50 is halved and doubled as printed") {
  const Rational half = fraction(25, 50);
  CHECK(weight(102 * half) == "3 lb 3 oz");
  CHECK(weight(22 * half) == "11 oz");
  CHECK(weight(12 * half) == "6 oz");
  CHECK(capacity(2 * half, units::us_cup) == "1 cup");
  CHECK(weight(15 * half) == "7 1/2 oz");
  CHECK(capacity(fraction(7, 4) * half, units::us_cup) == "3/4 cup + 2 tbsp");
  CHECK(weight(102 * fraction(100, 50)) == "12 lb 12 oz");
}

// Idaho State Department of Education, a recipe doubled.
TEST_CASE("a school recipe is doubled as printed") {
  CHECK(weight(2 * 136) == "17 lb");
  CHECK(as_mixed(2 * fraction(3, 4)) == "1 1/2");
  CHECK(capacity(2 * 2, units::us_quart) == "1 gal");
}

// Institute of Child Nutrition, "Basics at a Glance": a scoop's number is how many fill a quart.
// Where the printed measure is the quart divided, or the nearest spoons to it, the two agree; for
// numbers 10, 20, 30 and 40 the print differs from the division, so that table is stored and not
// computed.
TEST_CASE("a quart divided by a scoop's number is the measure printed") {
  struct Scoop {
    int number;
    const char* printed;
  };
  constexpr std::array<Scoop, 9> scoops{{{6, "2/3 cup"},
                                         {8, "1/2 cup"},
                                         {12, "1/3 cup"},
                                         {16, "1/4 cup"},
                                         {24, "2 tbsp + 2 tsp"},    // printed 2 2/3 tbsp
                                         {50, "1 tbsp + 3/4 tsp"},  // printed 3 3/4 tsp
                                         {60, "1 tbsp + 1/4 tsp"},  // printed 3 1/4 tsp
                                         {70, "2 3/4 tsp"},
                                         {100, "2 tsp"}}};
  for (const Scoop& scoop : scoops) {
    const Volume level = Volume::of(fraction(1, scoop.number), units::us_quart);
    CHECK(kitchen_parts_text(kitchen_measure(level, us_kitchen(unit_table()))) == scoop.printed);
  }
}
