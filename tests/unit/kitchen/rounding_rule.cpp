// SPDX-License-Identifier: MIT
// Amounts rounded by a table of steps and written in a chain of units.

#include "platewright/kitchen/rounding_rule.hpp"

#include <string>

#include "platewright/kitchen/measure_text.hpp"
#include "platewright/kitchen/scales.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

std::string grams_text(const Rational& grams, const KitchenRule& rule) {
  return kitchen_measure_text(weigh_out(Mass::of(grams, units::gram), rule));
}
std::string ounces_text(const Rational& ounces, const KitchenRule& rule) {
  return kitchen_measure_text(weigh_out(Mass::of(ounces, units::ounce), rule));
}

}  // namespace

TEST_CASE("an exact rule leaves the value as it is") {
  const KitchenRule exact{weight_steps(KitchenPolicy::exact), pounds_and_ounces(unit_table())};
  CHECK(ounces_text(fraction(348, 5), exact) == "4 lb 5 3/5 oz");
  const KitchenRule volume{measure_steps(KitchenPolicy::exact), gallons_to_teaspoons(unit_table())};
  const Volume odd = Volume::of(fraction(3 * 768 * 7 + 1, 7), units::us_teaspoon);
  CHECK(kitchen_measure_text(measure_out(odd, volume)) == "3 gal + 1/7 tsp");
}

TEST_CASE("a chain goes from gallons to teaspoons") {
  const KitchenRule rule{army_card_measures(), gallons_to_teaspoons(unit_table())};
  const Volume volume = Volume::of(768 + 192 + 36 + 6 + fraction(1, 4), units::us_teaspoon);
  CHECK(kitchen_measure_text(measure_out(volume, rule)) ==
        "1 gal + 1 qt + 3/4 cup + 2 tbsp + 1/4 tsp");
}

TEST_CASE("a metric chain changes its unit at a kilogram and a litre") {
  const KitchenRule weights{{}, grams_and_kilograms(unit_table())};
  CHECK(grams_text(999, weights) == "999 g");
  CHECK(grams_text(1250, weights) == "1.25 kg");
  const KitchenRule volumes{{}, litres_and_millilitres(unit_table())};
  CHECK(kitchen_measure_text(measure_out(Volume::of(950, units::millilitre), volumes)) == "950 mL");
  CHECK(kitchen_measure_text(measure_out(Volume::of(1050, units::millilitre), volumes)) ==
        "1.05 L");
}

TEST_CASE("a scale shows coarser steps for larger weights") {
  CHECK(ounces_text(fraction(21, 10), ounce_scale(unit_table())) == "2 oz (-4.8 %)");
  CHECK(ounces_text(fraction(11, 10), ounce_scale(unit_table())) == "1 1/8 oz (+2.3 %)");
  CHECK(ounces_text(fraction(1003, 10), ounce_scale(unit_table())) == "6 lb 4 1/2 oz (+0.2 %)");
  CHECK(ounces_text(fraction(4001, 10), ounce_scale(unit_table())) == "25 lb");
  CHECK(grams_text(fraction(123, 100), gram_scale(unit_table())) == "1.2 g (-2.4 %)");
  CHECK(grams_text(fraction(123, 10), gram_scale(unit_table())) == "12 g (-2.4 %)");
  CHECK(grams_text(123, gram_scale(unit_table())) == "125 g (+1.6 %)");
  CHECK(grams_text(999, gram_scale(unit_table())) == "1 kg (+0.1 %)");
  CHECK(grams_text(fraction(12345, 10), gram_scale(unit_table())) == "1.23 kg (-0.4 %)");
  CHECK(scale_of(MeasuringSystem::us, unit_table()) == ounce_scale(unit_table()));
  CHECK(scale_of(MeasuringSystem::metric, unit_table()) == gram_scale(unit_table()));
}

TEST_CASE("what is there never rounds to nothing") {
  const KitchenMeasure pinch =
      weigh_out(Mass::of(fraction(1, 100), units::gram), gram_scale(unit_table()));
  CHECK(pinch.measured == fraction(1, 10));
  CHECK(kitchen_measure_text(pinch) == "0.1 g (+900 %)");
  CHECK(grams_text(0, gram_scale(unit_table())) == "0 g");
}

TEST_CASE("the nearest step is the user's own and above 0") {
  const KitchenRule rule{weight_steps(KitchenPolicy::nearest_step, Mass::of(25, units::gram)),
                         grams_and_kilograms(unit_table())};
  CHECK(grams_text(110, rule) == "100 g (-9.1 %)");
  CHECK(grams_text(fraction(225, 2), rule) == "125 g (+11.1 %)");
  CHECK_THROWS_AS(weight_steps(KitchenPolicy::nearest_step), Failure);
  CHECK_THROWS_AS(measure_steps(KitchenPolicy::nearest_step), Failure);
}

TEST_CASE("a rule for weights refuses capacities, and the reverse") {
  const KitchenRule weights{{}, pounds_and_ounces(unit_table())};
  const KitchenRule volumes{{}, gallons_to_teaspoons(unit_table())};
  CHECK_THROWS_AS(measure_out(Volume::of(1, units::us_cup), weights), Failure);
  CHECK_THROWS_AS(weigh_out(Mass::of(1, units::pound), volumes), Failure);
}

TEST_CASE("from the threshold on weights win over measures") {
  CHECK(weights_win(Mass::of(16, units::ounce)));
  CHECK_FALSE(weights_win(Mass::of(fraction(159, 10), units::ounce)));
  CHECK(weights_win(Mass::of(200, units::gram), Mass::of(200, units::gram)));
}

TEST_CASE("each policy has its own name") {
  CHECK(policy_name(KitchenPolicy::exact) == "exact");
  CHECK(policy_name(KitchenPolicy::army_card) == "army card");
  CHECK(policy_name(KitchenPolicy::usda_schools) == "usda schools");
  CHECK(policy_name(KitchenPolicy::nearest_step) == "nearest step");
}
