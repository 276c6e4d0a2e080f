// SPDX-License-Identifier: MIT
// Rounding tables and conversions against what published cards print.

#include <array>
#include <cstddef>
#include <string>

#include "platewright/kitchen/measure_text.hpp"
#include "platewright/kitchen/scales.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

Mass ounces_of(const Rational& count) {
  return Mass::of(count, units::ounce);
}

KitchenRule army_weights() {
  return {weight_steps(KitchenPolicy::army_card), pounds_and_ounces(unit_table())};
}

std::string usda_weight(const Rational& count) {
  return kitchen_parts_text(
      weigh_out(ounces_of(count), {usda_schools_weights(), pounds_and_ounces(unit_table())}));
}

std::string usda_measure(const Rational& count, const NamedUnit<VolumeDimension>& unit) {
  return kitchen_parts_text(measure_out(
      Volume::of(count, unit), {usda_schools_measures(), gallons_to_teaspoons(unit_table())}));
}

}  // namespace

// Armed Forces Recipe Service, TM 10-412, card A-1, 2003.
TEST_CASE("ounces are decimal pounds as card A-1 prints them") {
  constexpr std::array<int, 15> hundredths{6,  13, 19, 25, 31, 38, 44, 50,
                                           56, 63, 69, 75, 81, 88, 94};
  for (int i = 1; i <= 15; ++i) {
    const KitchenMeasure shown = weigh_out(ounces_of(i), decimal_pound_scale(unit_table()));
    const int printed = hundredths[static_cast<std::size_t>(i) - 1];
    CHECK(shown.parts.front().amount.number == fraction(printed, 100));
  }
  CHECK(kitchen_parts_text(weigh_out(ounces_of(2 * 16 + 10), decimal_pound_scale(unit_table()))) ==
        "2.63 lb");
}

// The same card: the table of hundredths of an ounce.
TEST_CASE("hundredths of an ounce become quarters as card A-1 prints them") {
  for (int hundredth = 0; hundredth < 100; ++hundredth) {
    const int quarters = hundredth <= 12   ? 0
                         : hundredth <= 37 ? 1
                         : hundredth <= 62 ? 2
                         : hundredth <= 87 ? 3
                                           : 4;
    const KitchenMeasure shown =
        weigh_out(ounces_of(20 + fraction(hundredth, 100)), army_weights());
    CHECK(shown.measured == ounces_of(20 + fraction(quarters, 4)).in(units::gram));
  }
}

// The same card: a recipe for 100 made for 348.
TEST_CASE("1 lb 4 oz for 100 is 4 lb 5 1/2 oz for 348") {
  const Rational factor = fraction(348, 100);
  CHECK(as_decimal(factor, 2) == "3.48");
  const Mass scaled = ounces_of(20) * factor;
  const KitchenMeasure pounds = weigh_out(scaled, decimal_pound_scale(unit_table()));
  CHECK(kitchen_measure_text(pounds) == "4.35 lb");
  CHECK(pounds.error() == 0);
  CHECK(kitchen_parts_text(weigh_out(scaled, army_weights())) == "4 lb 5 1/2 oz");
}

// The same card: what is on hand decides the number of portions.
TEST_CASE("102 lb on hand at 30 lb for 100 are 340 portions") {
  const Rational factor = Mass::of(102, units::pound) / Mass::of(30, units::pound);
  CHECK(factor == fraction(340, 100));
  CHECK(factor * 100 == 340);
}

// The USDA's guide for rounding off weights and measures in school recipes.
TEST_CASE("weights are rounded as the USDA's school guide prints") {
  CHECK(usda_weight(fraction(31, 10)) == "3 oz");
  CHECK(usda_weight(fraction(32, 10)) == "3 1/4 oz");
  CHECK(usda_weight(fraction(103, 10)) == "10 1/2 oz");
  CHECK(usda_weight(fraction(392, 10)) == "2 lb 7 oz");
  CHECK(usda_weight(fraction(416, 10)) == "2 lb 10 oz");
  CHECK(usda_weight(fraction(83, 1)) == "5 lb 4 oz");
  CHECK(usda_weight(fraction(1613, 10)) == "10 lb");
}

TEST_CASE("measures are rounded as the USDA's school guide prints") {
  CHECK(usda_measure(fraction(3, 10), units::us_teaspoon) == "1/4 tsp");
  CHECK(usda_measure(fraction(34, 10), units::us_teaspoon) == "1 tbsp + 1/2 tsp");
  CHECK(usda_measure(fraction(103, 10), units::us_teaspoon) == "3 tbsp + 1 1/2 tsp");
  CHECK(usda_measure(fraction(304, 10), units::us_teaspoon) == "1/2 cup + 2 tbsp");
  CHECK(usda_measure(fraction(33, 10), units::us_cup) == "3 1/4 cups");
  CHECK(usda_measure(fraction(93, 10), units::us_cup) == "2 qt + 1 1/2 cups");
  CHECK(usda_measure(fraction(204, 10), units::us_cup) == "1 gal + 1 qt");
  CHECK(usda_measure(fraction(52, 10), units::us_gallon) == "5 gal + 1 qt");
  CHECK(usda_measure(fraction(123, 10), units::us_gallon) == "12 gal + 2 qt");
  CHECK(usda_measure(fraction(236, 10), units::us_gallon) == "24 gal");
}
