// SPDX-License-Identifier: MIT
// There and back through any two units.

#include <rapidcheck.h>

#include "platewright/quantity/ingredient_weights.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Unit any_unit() {
  const std::vector<Unit>& all = unit_table().all();
  return all[*rc::gen::inRange<std::size_t>(0, all.size())];
}

}  // namespace

TEST_CASE("there and back through any two units of one dimension is identity") {
  CHECK(rc::check([] {
    const Amount amount{random_number(100), any_unit()};
    const Unit other = any_unit();
    if (!same_measure(amount.unit, other)) {
      RC_ASSERT(problem_of([&] { in_unit(amount, other); }).id == "units-do-not-mix");
      return;
    }
    RC_ASSERT(in_unit(in_unit(amount, other), amount.unit) == amount);
  }));
}

TEST_CASE("a way round through a third unit changes nothing") {
  CHECK(rc::check([] {
    const Amount amount = random_weight();
    const Unit second = random_weight().unit;
    const Unit third = random_weight().unit;
    RC_ASSERT(in_unit(in_unit(amount, second), third) == in_unit(amount, third));
  }));
}

TEST_CASE("a sum is the same from both ends, and weighs what its parts weigh") {
  CHECK(rc::check([] {
    const Amount left = random_weight();
    const Amount right = random_weight();
    RC_ASSERT(sum(left, right).canonical() == sum(right, left).canonical());
    RC_ASSERT(to_mass(sum(left, right)) == to_mass(left) + to_mass(right));
  }));
}

TEST_CASE("through one weighing, capacity and weight are there and back too") {
  CHECK(rc::check([] {
    MeasureWeight cup = weighing("1 cup", grams(random_number(300)));
    const IngredientWeights weights{"something", {cup}};
    const Amount amount = random_weight();
    const Unit quart = unit_table().find("qt", MeasuringSystem::us);
    const Amount measured = convert(amount, quart, weights).amount;
    RC_ASSERT(convert(measured, amount.unit, weights).amount == amount);
  }));
}

TEST_CASE("what is written as an amount is read back as it was") {
  CHECK(rc::check([] {
    const Amount amount{random_number(100), any_unit()};
    const MeasuringSystem system = amount.unit.record().system;
    RC_ASSERT(read_amount(amount_text(amount), unit_table(), system) == amount);
  }));
}
