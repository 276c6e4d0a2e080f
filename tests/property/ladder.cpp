// SPDX-License-Identifier: MIT
// Laws of ladders that hold for any yields.

#include "platewright/yield/ladder.hpp"

#include <rapidcheck.h>

#include <algorithm>

#include "platewright/quantity/units.hpp"
#include "platewright/yield/portions.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

Rational any_fraction(std::int64_t most) {
  return fraction(*rc::gen::inRange<std::int64_t>(1, most),
                  *rc::gen::inRange<std::int64_t>(1, most));
}

Mass any_mass() {
  return Mass::of(any_fraction(1'000'000), units::gram);
}

/// From purchased to served over any of the stages between, with any yields above 0.
Ladder any_ladder() {
  std::vector<Rung> rungs;
  Stage from = Stage::purchased;
  for (const Stage to : {Stage::thawed, Stage::trimmed, Stage::cooked, Stage::carved}) {
    if (!*rc::gen::arbitrary<bool>()) continue;
    rungs.push_back({from, to, any_fraction(1000), {}, "", {}, {}, false});
    from = to;
  }
  rungs.push_back({from, Stage::served, any_fraction(1000), {}, "", {}, {}, false});
  return Ladder(std::move(rungs));
}

}  // namespace

TEST_CASE("down and up are inverse to each other, whichever comes first") {
  REQUIRE(rc::check([] {
    const Ladder ladder = any_ladder();
    const Mass mass = any_mass();
    RC_ASSERT(ladder.up(ladder.down(mass)) == mass);
    RC_ASSERT(ladder.down(ladder.up(mass)) == mass);
  }));
}

TEST_CASE("down and up are inverse between any two stages") {
  REQUIRE(rc::check([] {
    const Ladder ladder = any_ladder();
    const Mass mass = any_mass();
    const auto steps = ladder.walk(mass);
    for (std::size_t i = 0; i < steps.size(); ++i) {
      for (std::size_t j = i; j < steps.size(); ++j) {
        RC_ASSERT(ladder.down(steps[i].mass, steps[i].stage, steps[j].stage) == steps[j].mass);
        RC_ASSERT(ladder.up(steps[j].mass, steps[j].stage, steps[i].stage) == steps[i].mass);
      }
    }
  }));
}

TEST_CASE("a walk ends at the product of the yields") {
  REQUIRE(rc::check([] {
    const Ladder ladder = any_ladder();
    Rational product = 1;
    for (const Rung& rung : ladder.rungs()) product *= rung.yield;
    const auto steps = ladder.walk(any_mass());
    RC_ASSERT(steps.back().share == product);
    RC_ASSERT(ladder.yield() == product);
    RC_ASSERT(steps.back().mass == steps.front().mass * product);
  }));
}

TEST_CASE("own rungs from end to end are the ladder, and hold what it held") {
  REQUIRE(rc::check([] {
    std::vector<Rung> table;
    const Ladder bare = any_ladder();
    for (Rung rung : bare.rungs()) {
      for (const Loss loss : {Loss::purge, Loss::trim, Loss::cooking, Loss::bone, Loss::carving}) {
        const Stage at = stage_of(loss);
        if (at > rung.from && at <= rung.to) rung.holds.push_back(loss);
      }
      table.push_back(std::move(rung));
    }
    const Ladder row(table);
    std::vector<Rung> own = any_ladder().rungs();
    for (Rung& rung : own) rung.yield = fraction(*rc::gen::inRange<std::int64_t>(1, 100), 99);
    for (Rung& rung : own) rung.yield = std::min(rung.yield, Rational(1));
    Rational product = 1;
    for (const Rung& rung : own) product *= rung.yield;
    const Ladder ladder = row.with_own_rungs(own);
    RC_ASSERT(ladder.rungs().size() == own.size());
    RC_ASSERT(ladder.yield() == product);
    for (const Loss loss : {Loss::purge, Loss::trim, Loss::cooking, Loss::bone, Loss::carving}) {
      RC_ASSERT(ladder.holds(loss) == row.holds(loss));
    }
    // What stands on every one of these rungs is what the cook weighed.
    for (std::size_t i = 0; i < own.size(); ++i) {
      RC_ASSERT(ladder.rungs()[i].yield == own[i].yield);
      RC_ASSERT(ladder.share_at(own[i].to) <= ladder.share_at(own[i].from));
    }
  }));
}

TEST_CASE("what is bought serves exactly the portions it was bought for") {
  REQUIRE(rc::check([] {
    const Ladder ladder = any_ladder();
    const Mass portion = any_mass();
    const Integer guests = *rc::gen::inRange(1, 2000);
    const WeightToBuy need = weight_to_buy(ladder, Rational(guests), portion);
    const PortionsServed served = portions_from(ladder, need.purchased, portion);
    RC_ASSERT(served.portions == guests);
    RC_ASSERT(served.left_over == Mass{});
    RC_ASSERT(portion_for(ladder, need.purchased, Rational(guests)) == portion);
  }));
}

TEST_CASE("whole pieces cover the need, and one piece fewer does not") {
  REQUIRE(rc::check([] {
    const Ladder ladder = any_ladder();
    const WeightToBuy need = weight_to_buy(ladder, *rc::gen::inRange(1, 2000), any_mass());
    const Mass piece = any_mass();
    const PiecesToBuy pieces = pieces_to_buy(ladder, need, piece);
    RC_ASSERT(pieces.purchased >= need.purchased);
    RC_ASSERT(piece * Rational(pieces.pieces - 1) < need.purchased);
    RC_ASSERT(Rational(pieces.serves) >= need.portions);
    RC_ASSERT(ladder.down(pieces.surplus_purchased) == pieces.surplus_served);
  }));
}
