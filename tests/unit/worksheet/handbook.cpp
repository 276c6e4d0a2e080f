// SPDX-License-Identifier: MIT
#include "platewright/worksheet/handbook.hpp"

#include "support/catch.hpp"

using namespace platewright;

namespace {

Rung rung(Stage from, Stage to, const Rational& yield, std::vector<Loss> holds,
          Spread spread = {}) {
  return {from, to, yield, std::move(holds), {}, std::move(spread), {}, false};
}

const TestedYields& tested() {
  static const TestedYields yields{fraction(9, 10), fraction(3, 4), fraction(4, 5)};
  return yields;
}

}  // namespace

TEST_CASE("a tested yield stands beside the table's, in standard deviations and in its range") {
  const Ladder ladder(
      {rung(Stage::purchased, Stage::cooked, fraction(80, 100), {Loss::cooking},
            {35, fraction(25, 1000), fraction(70, 100), fraction(85, 100)}),
       rung(Stage::cooked, Stage::served, fraction(84, 100), {Loss::bone, Loss::trim})});
  const auto beside = beside_handbook(ladder, tested());
  REQUIRE(beside.size() == 2);
  // A cooking yield is of the piece that goes into the oven: the trim test does not count.
  CHECK(beside[0].tested == fraction(3, 4));
  CHECK(beside[0].from_oven_ready);
  CHECK_FALSE(beside[1].from_oven_ready);
  CHECK(beside[0].deviations == Rational(-2));
  CHECK(beside[0].within_range == true);
  CHECK(beside[1].tested == fraction(4, 5));
  CHECK_FALSE(beside[1].deviations.has_value());
  CHECK_FALSE(beside[1].within_range.has_value());
}

TEST_CASE("a test outside the printed range is said to be") {
  const Ladder ladder({rung(Stage::purchased, Stage::cooked, fraction(80, 100), {Loss::cooking},
                            {10, std::nullopt, fraction(78, 100), fraction(85, 100)})});
  CHECK(beside_handbook(ladder, tested()).front().within_range == false);
}

TEST_CASE("a rung that holds bone, trim and cooking is held against the whole chain") {
  const Ladder ladder({rung(Stage::purchased, Stage::served, fraction(1, 2),
                            {Loss::bone, Loss::trim, Loss::cooking})});
  CHECK(beside_handbook(ladder, tested()).front().tested == fraction(54, 100));
  CHECK_FALSE(beside_handbook(ladder, tested()).front().from_oven_ready);
  TestedYields oven_ready = tested();
  oven_ready.trimming = std::nullopt;
  CHECK(beside_handbook(ladder, oven_ready).front().tested == fraction(60, 100));
  CHECK(beside_handbook(ladder, oven_ready).front().from_oven_ready);
}

TEST_CASE("a step that was not tested has nothing beside it") {
  const Ladder ladder(
      {rung(Stage::purchased, Stage::trimmed, fraction(82, 100), {Loss::trim, Loss::skin}),
       rung(Stage::trimmed, Stage::cooked, fraction(9, 10), {Loss::cooking}),
       rung(Stage::cooked, Stage::served, fraction(9, 10), {Loss::carving})});
  CHECK(beside_handbook(ladder, {}).empty());
  const auto trimmed = beside_handbook(ladder, {fraction(4, 5), {}, {}});
  REQUIRE(trimmed.size() == 1);
  CHECK(trimmed.front().tested == fraction(4, 5));
  const auto cooked = beside_handbook(ladder, {{}, fraction(4, 5), {}});
  REQUIRE(cooked.size() == 1);
  CHECK(cooked.front().rung.to == Stage::cooked);
}
