// SPDX-License-Identifier: MIT
// What must hold for every amount that is rounded by a table of steps.

#include <rapidcheck.h>

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>

#include "platewright/kitchen/rounding_rule.hpp"
#include "platewright/kitchen/scales.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

Rational any_size() {
  const auto numerator = *rc::gen::inRange<std::int64_t>(0, 1000000);
  return fraction(numerator, *rc::gen::element<std::int64_t>(1, 3, 7, 64, 1000));
}

Rational sum_of(const KitchenMeasure& measure) {
  Rational sum;
  for (const KitchenPart& part : measure.parts) sum += part.amount.canonical();
  return sum;
}

}  // namespace

TEST_CASE("a weight is the sum of its parts, and rounding it again changes nothing") {
  const std::array<KitchenRule, 6> rules{
      {{army_card_weights(), pounds_and_ounces(unit_table())},
       {usda_schools_weights(), pounds_and_ounces(unit_table())},
       {weight_steps(KitchenPolicy::exact), pounds_and_ounces(unit_table())},
       ounce_scale(unit_table()),
       decimal_pound_scale(unit_table()),
       gram_scale(unit_table())}};
  CHECK(rc::check("weights", [&] {
    const KitchenRule& rule = rules[*rc::gen::inRange<std::size_t>(0, rules.size())];
    const KitchenMeasure once = weigh_out(Mass::of(any_size(), units::gram), rule);
    RC_ASSERT(sum_of(once) == once.measured);
    RC_ASSERT((once.measured == 0) == (once.asked == 0));
    const KitchenMeasure twice = weigh_out(Mass::of(once.measured, units::gram), rule);
    RC_ASSERT(twice.parts == once.parts);
    RC_ASSERT(twice.error() == 0);
  }));
}

TEST_CASE("a capacity is the sum of its parts, and rounding it again changes nothing") {
  const std::array<KitchenRule, 3> rules{
      {{army_card_measures(), gallons_to_teaspoons(unit_table())},
       {usda_schools_measures(), gallons_to_teaspoons(unit_table())},
       {measure_steps(KitchenPolicy::exact), litres_and_millilitres(unit_table())}}};
  CHECK(rc::check("capacities", [&] {
    const KitchenRule& rule = rules[*rc::gen::inRange<std::size_t>(0, rules.size())];
    const KitchenMeasure once = measure_out(Volume::of(any_size(), units::millilitre), rule);
    RC_ASSERT(sum_of(once) == once.measured);
    RC_ASSERT((once.measured == 0) == (once.asked == 0));
    const KitchenMeasure twice = measure_out(Volume::of(once.measured, units::millilitre), rule);
    RC_ASSERT(twice.parts == once.parts);
    RC_ASSERT(twice.error() == 0);
  }));
}

TEST_CASE("the army card's chain stays below the next larger measure") {
  CHECK(rc::check("counts", [&] {
    const KitchenRule rule{army_card_measures(), gallons_to_teaspoons(unit_table())};
    const Volume volume = Volume::of(any_size(), units::us_teaspoon);
    for (const KitchenPart& part : measure_out(volume, rule).parts) {
      const std::string& name = part.amount.unit.name();
      if (name == "US teaspoon") RC_ASSERT(part.amount.number < 3);
      if (name == "US tablespoon") RC_ASSERT(part.amount.number < 4);
      if (name == "US cup") RC_ASSERT(part.amount.number < 4);
      if (name == "US quart") RC_ASSERT(part.amount.number < 4);
    }
  }));
}
