// SPDX-License-Identifier: MIT
// What must hold for the kitchens that cooks name, and for the crossing to floating-point numbers.

#include <rapidcheck.h>

#include <cmath>

#include "platewright/kitchen/kitchen.hpp"
#include "platewright/kitchen/read_tools.hpp"
#include "platewright/quantity/approximate.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

Rational any_amount() {
  const auto top = *rc::gen::inRange<std::int64_t>(1, 10000000);
  const auto bottom = *rc::gen::element<std::int64_t>(1, 2, 3, 7, 48, 1000, 9973);
  return fraction(top, bottom);
}

/// Some of the spoons, cups and jugs that are sold, one of each size at most and never none.
std::vector<std::string> any_drawer() {
  std::vector<std::string> out{*rc::gen::element<std::string>("1 tsp", "1 tbsp", "1 cup")};
  for (const char* piece : {"1/8 tsp", "1/4 tsp", "1/2 tsp", "1/2 tbsp", "1/4 cup", "1/3 cup",
                            "1/2 cup", "2 cups", "1-4 qt by 1/4 qt", "100-500 mL by 25 mL"}) {
    if (*rc::gen::arbitrary<bool>()) out.emplace_back(piece);
  }
  return out;
}

Rational distance(const Rational& value) {
  return value < 0 ? Rational(-value) : value;
}

}  // namespace

TEST_CASE("any drawer measures within the tolerance, or says that it can not") {
  CHECK(rc::check("owned measures", [] {
    Kitchen kitchen = usual_kitchen(MeasuringSystem::us, unit_table());
    kitchen.measures = read_measures(any_drawer(), MeasuringSystem::us, unit_table());
    kitchen.tolerance = fraction(*rc::gen::inRange(0, 20), 100);
    const KitchenMeasure measured =
        measured_in(Volume::of(any_amount(), units::millilitre), kitchen);
    RC_ASSERT(measured.nearest_only || distance(measured.error()) <= kitchen.tolerance);
    Rational sum;
    for (const KitchenPart& part : measured.parts) {
      sum += part.amount.canonical();
      bool owned = false;
      for (const KitchenTool& tool : kitchen.measures.tools()) {
        owned = owned || (tool.unit == part.amount.unit &&
                          tool.at_or_below(part.amount.number) == part.amount.number);
      }
      RC_ASSERT(owned);
    }
    RC_ASSERT(sum == measured.measured);
  }));
}

TEST_CASE("a double holds a fraction to 2^-53 and is itself a fraction") {
  CHECK(rc::check("there and back", [] {
    const Rational value = any_amount() / any_amount();
    const double near = nearest_double(value);
    RC_ASSERT(distance(exact_value(near) - value) * Rational(Integer(1) << 53U) <= value);
    RC_ASSERT(nearest_double(exact_value(near)) == near);
    RC_ASSERT(exact_value(-near) == -exact_value(near));
    // No neighbour is nearer.
    for (const double other : {std::nextafter(near, 0.0), std::nextafter(near, 1e300)}) {
      RC_ASSERT(distance(exact_value(other) - value) >= distance(exact_value(near) - value));
    }
  }));
}
