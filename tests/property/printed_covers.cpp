// SPDX-License-Identifier: MIT
// What is printed to buy, typed back in, covers the guests.

#include <rapidcheck.h>

#include "platewright/card/kitchen_view.hpp"
#include "platewright/yield/portions.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Ladder random_ladder() {
  Rung cooked;
  cooked.to = Stage::cooked;
  cooked.yield = fraction(*rc::gen::inRange<std::int64_t>(30, 100), 100);
  cooked.holds = {Loss::cooking};
  Rung served;
  served.from = Stage::cooked;
  served.to = Stage::served;
  served.yield = fraction(*rc::gen::inRange<std::int64_t>(40, 100), 100);
  served.holds = {Loss::bone};
  return Ladder({cooked, served});
}

}  // namespace

TEST_CASE("the weight to buy, as it is printed and typed back in, serves all guests") {
  CHECK(rc::check([] {
    const MeasuringSystem system =
        *rc::gen::element(MeasuringSystem::us, MeasuringSystem::imperial, MeasuringSystem::metric);
    const KitchenView view(usual_kitchen(system, unit_table()));
    const Ladder ladder = random_ladder();
    const Rational guests = *rc::gen::inRange<std::int64_t>(1, 400);
    const Mass portion = ounces(fraction(*rc::gen::inRange<std::int64_t>(4, 60), 4));
    const Mass needed = ladder.up(portion * guests);
    const Mass printed =
        to_mass(read_amount(view.weight(needed, Rounding::up).text, unit_table(), system));
    RC_ASSERT(printed >= needed);
    RC_ASSERT(ladder.down(printed) >= portion * guests);
    const Mass left = portion / 7;
    RC_ASSERT(to_mass(read_amount(view.weight(left, Rounding::down).text, unit_table(), system)) <=
              left);
  }));
}
