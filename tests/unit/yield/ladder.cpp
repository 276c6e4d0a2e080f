// SPDX-License-Identifier: MIT
#include "platewright/yield/ladder.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Rung rung(Stage from, Stage to, const Rational& yield, std::vector<Loss> holds) {
  return {from, to, yield, std::move(holds), "roasted", {}, {"a table", "1"}, false};
}

/// Of 100 g purchased: 80 g trimmed, 60 g cooked, 54 g served.
Ladder leg() {
  return Ladder({rung(Stage::purchased, Stage::trimmed, fraction(4, 5), {Loss::trim}),
                 rung(Stage::trimmed, Stage::cooked, fraction(3, 4), {Loss::cooking}),
                 rung(Stage::cooked, Stage::served, fraction(9, 10), {Loss::bone})});
}

}  // namespace

TEST_CASE("a ladder goes down and up by the product of its yields") {
  const Ladder ladder = leg();
  CHECK(ladder.first() == Stage::purchased);
  CHECK(ladder.last() == Stage::served);
  CHECK(ladder.yield() == fraction(54, 100));
  CHECK(ladder.yield_between(Stage::trimmed, Stage::served) == fraction(675, 1000));
  CHECK(ladder.yield_between(Stage::cooked, Stage::cooked) == 1);
  CHECK(ladder.down(grams(100)) == grams(54));
  CHECK(ladder.up(grams(54)) == grams(100));
  CHECK(ladder.down(grams(80), Stage::trimmed, Stage::cooked) == grams(60));
  CHECK(ladder.up(grams(54), Stage::served, Stage::trimmed) == grams(80));
}

TEST_CASE("a walk shows every stage with its weight, share and rung") {
  const auto steps = leg().walk(grams(200));
  REQUIRE(steps.size() == 4);
  CHECK(steps[0].stage == Stage::purchased);
  CHECK_FALSE(steps[0].rung.has_value());
  CHECK(steps[0].mass == grams(200));
  CHECK(steps[1].mass == grams(160));
  CHECK(steps[2].mass == grams(120));
  CHECK(steps[2].share == fraction(3, 5));
  CHECK(steps[2].rung->holds == std::vector<Loss>{Loss::cooking});
  CHECK(steps[3].stage == Stage::served);
  CHECK(steps[3].mass == grams(108));
}

TEST_CASE("where nothing is lost every stage weighs the same") {
  const Ladder ladder = Ladder::nothing_lost();
  CHECK(ladder.loses_nothing());
  CHECK(ladder.yield() == 1);
  CHECK(ladder.has(Stage::carved));
  CHECK(ladder.up(grams(7), Stage::carved, Stage::thawed) == grams(7));
  CHECK(problem_of([&] { ladder.down(grams(7), Stage::carved, Stage::thawed); }).id ==
        "stages-out-of-order");
  const auto steps = ladder.walk(grams(7));
  REQUIRE(steps.size() == 2);
  CHECK(steps[1].stage == Stage::served);
  CHECK(steps[1].mass == grams(7));
}

TEST_CASE("a list without rungs is not the same as nothing lost") {
  CHECK(problem_of([] { Ladder(std::vector<Rung>{}); }).id == "ladder-empty");
}

TEST_CASE("rungs stand in order and touch") {
  const Rung trimming = rung(Stage::purchased, Stage::trimmed, fraction(4, 5), {});
  const Rung roasting = rung(Stage::trimmed, Stage::cooked, fraction(3, 4), {});
  const Rung serving = rung(Stage::carved, Stage::served, fraction(3, 4), {});
  CHECK(problem_of([&] { Ladder({roasting, trimming}); }).id == "stages-out-of-order");
  const Problem problem = problem_of([&] { Ladder({trimming, roasting, serving}); });
  CHECK(problem.id == "rungs-not-joined");
  CHECK(problem.found == "a rung that ends at cooked before one that begins at carved");
  CHECK(problem_of([&] { Ladder({trimming, trimming}); }).id == "stages-out-of-order");
}

TEST_CASE("a loss that a rung already holds can't be taken off again") {
  const Rung edible =
      rung(Stage::purchased, Stage::cooked, fraction(1, 2), {Loss::bone, Loss::cooking});
  const Rung boning = rung(Stage::cooked, Stage::served, fraction(3, 4), {Loss::bone});
  const Problem problem = problem_of([&] { Ladder({edible, boning}); });
  CHECK(problem.id == "loss-held-twice");
  CHECK(problem.found ==
        "bone in the rung purchased to cooked and again in the rung cooked to served");
  const Rung carving = rung(Stage::cooked, Stage::served, fraction(9, 10), {Loss::carving});
  CHECK(Ladder({edible, carving}).yield() == fraction(9, 20));
}

TEST_CASE("a loss is found across the rungs between") {
  CHECK(problem_of([] {
          Ladder({rung(Stage::purchased, Stage::thawed, 1, {Loss::purge}),
                  rung(Stage::thawed, Stage::cooked, 1, {Loss::cooking}),
                  rung(Stage::cooked, Stage::served, 1, {Loss::purge})});
        }).id == "loss-held-twice");
}

TEST_CASE("a stage that the ladder skips is named with those it has") {
  const Problem problem = problem_of([] { leg().up(grams(1), Stage::carved, Stage::purchased); });
  CHECK(problem.id == "stage-missing");
  CHECK(problem.found == "no stage carved on this ladder");
  CHECK(problem.expected == "one of its stages: purchased, trimmed, cooked, served");
}

TEST_CASE("asking up for what lies below is a problem") {
  CHECK(problem_of([] { leg().up(grams(1), Stage::purchased, Stage::served); }).id ==
        "stages-out-of-order");
  CHECK(problem_of([] { leg().down(grams(1), Stage::served, Stage::purchased); }).id ==
        "stages-out-of-order");
}

TEST_CASE("the cook's own yield takes the place of a table's") {
  const Spread spread{3, fraction(1, 100), {}, {}};
  const Ladder ladder = leg().with_own_rungs({Rung{Stage::trimmed,
                                                   Stage::cooked,
                                                   fraction(7, 10),
                                                   {},
                                                   {},
                                                   spread,
                                                   {"own test", "three legs"},
                                                   true}});
  REQUIRE(ladder.rungs().size() == 3);
  CHECK(ladder.yield() == fraction(252, 500));
  CHECK(ladder.rungs()[1].own);
  CHECK(ladder.rungs()[1].source.row == "three legs");
  CHECK(ladder.rungs()[1].method == "roasted");
  CHECK(ladder.rungs()[1].spread == spread);
  CHECK_FALSE(ladder.rungs()[0].own);
}

TEST_CASE("the cook's own yield of several rungs holds what they held") {
  const Ladder ladder = leg().with_own_rung(Stage::trimmed, Stage::served, fraction(2, 3), {});
  REQUIRE(ladder.rungs().size() == 2);
  CHECK(ladder.rungs()[1].holds == std::vector<Loss>{Loss::cooking, Loss::bone});
  CHECK(ladder.rungs()[1].from == Stage::trimmed);
  CHECK(ladder.yield() == fraction(8, 15));
}

TEST_CASE("the cook's own yield needs stages of the ladder, in order, and a yield above 0") {
  const auto tested = [](Stage from, Stage to, const Rational& yield) {
    return problem_of([&] { leg().with_own_rung(from, to, yield, {}); }).id;
  };
  CHECK(tested(Stage::thawed, Stage::cooked, 1) == "stage-missing");
  CHECK(tested(Stage::cooked, Stage::trimmed, 1) == "stages-out-of-order");
  CHECK(tested(Stage::trimmed, Stage::cooked, 0) == "yield-not-positive");
}

TEST_CASE("goods that lost nothing so far can be given a yield") {
  const Ladder ladder = Ladder::nothing_lost().with_own_rung(Stage::purchased, Stage::served,
                                                             fraction(9, 10), {"own test", ""});
  CHECK(ladder.yield() == fraction(9, 10));
  CHECK(ladder.rungs().front().own);
}

TEST_CASE("a test of one's own goes on from the last stage or stands in a rung's place") {
  const Ladder cooked(
      {{Stage::purchased, Stage::cooked, fraction(3, 4), {Loss::cooking}, {}, {}, {}, false}});
  const Source ours{"our own test", {}};
  const Ladder longer = cooked.with_own_rung(Stage::cooked, Stage::served, fraction(4, 5), ours);
  REQUIRE(longer.rungs().size() == 2);
  CHECK(longer.yield() == fraction(3, 5));
  CHECK(longer.rungs().back().holds == std::vector<Loss>{Loss::carving});
  CHECK(longer.rungs().back().own);
  const Ladder replaced =
      cooked.with_own_rung(Stage::purchased, Stage::cooked, fraction(7, 10), ours);
  REQUIRE(replaced.rungs().size() == 1);
  CHECK(replaced.yield() == fraction(7, 10));
  CHECK(replaced.rungs().front().holds == std::vector<Loss>{Loss::cooking});
}

TEST_CASE("a test of one's own is no more than what can be") {
  const auto refused = [](const Ladder& ladder, Stage from, const Rational& yield) {
    return problem_of([&] { ladder.with_own_rung(from, Stage::cooked, yield, {}); });
  };
  const Ladder meat(
      {{Stage::purchased, Stage::cooked, fraction(3, 4), {Loss::cooking}, {}, {}, {}, false}});
  const Problem seventy = refused(meat, Stage::purchased, 70);
  CHECK(seventy.id == "yield-too-large");
  CHECK(seventy.remedy.find("70 %") != std::string::npos);
  CHECK(refused(meat, Stage::purchased, fraction(21, 20)).id == "yield-too-large");
  const Ladder grain(
      {{Stage::purchased, Stage::cooked, 3, {Loss::water_taken_up}, {}, {}, {}, false}});
  CHECK(grain.with_own_rung(Stage::purchased, Stage::cooked, fraction(14, 5), {}).yield() ==
        fraction(14, 5));
  CHECK(refused(grain, Stage::purchased, 280).id == "yield-too-large");
}

TEST_CASE("what the goods hold as bought is in the weight until a rung takes it out") {
  const Rung oven = rung(Stage::purchased, Stage::cooked, fraction(3, 4), {Loss::cooking});
  const Ladder cooked({oven}, {Loss::bone});
  CHECK(cooked.still_held() == std::vector<Loss>{Loss::bone});
  CHECK(Ladder({oven}).still_held().empty());
  const Rung boned = rung(Stage::cooked, Stage::served, fraction(3, 4), {Loss::bone});
  CHECK(cooked.with_further_rung(boned).still_held().empty());
  // Served on the bone.
  const Rung served = rung(Stage::cooked, Stage::served, fraction(3, 4), {Loss::trim});
  CHECK(cooked.with_further_rung(served).still_held() == std::vector<Loss>{Loss::bone});
  // A yield to the plate that names no loss holds all of them.
  CHECK(Ladder({rung(Stage::purchased, Stage::served, fraction(1, 2), {})}, {Loss::bone})
            .still_held()
            .empty());
}

TEST_CASE("who carves takes out the bone that is still there, a test at the oven does not") {
  const Ladder cooked({rung(Stage::purchased, Stage::cooked, fraction(3, 4), {Loss::cooking})},
                      {Loss::bone});
  const Ladder carved = cooked.with_own_rung(Stage::cooked, Stage::served, fraction(4, 5), {});
  CHECK(carved.rungs().back().holds == std::vector<Loss>{Loss::bone, Loss::carving});
  CHECK(carved.still_held().empty());
  CHECK(cooked.with_own_rung(Stage::purchased, Stage::cooked, fraction(7, 10), {}).still_held() ==
        std::vector<Loss>{Loss::bone});
}

namespace {

Rung own(Stage from, Stage to, const Rational& yield) {
  return {from, to, yield, {}, {}, {}, {"our test", {}}, true};
}

std::vector<Loss> held(const Ladder& ladder, std::size_t rung) {
  return ladder.rungs().at(rung).holds;
}

}  // namespace

TEST_CASE("one's own rungs are enough for themselves, whatever stages the table's row has") {
  // The row has no trimmed stage, and none for the carving.
  const Ladder row({rung(Stage::purchased, Stage::cooked, fraction(74, 100), {Loss::cooking}),
                    rung(Stage::cooked, Stage::served, fraction(78, 100), {Loss::bone})});
  const Ladder ladder = row.with_own_rungs({own(Stage::cooked, Stage::served, fraction(3, 4)),
                                            own(Stage::purchased, Stage::trimmed, fraction(9, 10)),
                                            own(Stage::trimmed, Stage::cooked, fraction(7, 10))});
  REQUIRE(ladder.rungs().size() == 3);
  CHECK(ladder.yield() == fraction(189, 400));
  CHECK(held(ladder, 0).empty());
  CHECK(held(ladder, 1) == std::vector<Loss>{Loss::cooking});
  CHECK(held(ladder, 2) == std::vector<Loss>{Loss::bone});
  CHECK(ladder.rungs()[1].method == "roasted");
  // The mirror: the row is trimmed and no further, the cook's own test goes from the delivery on.
  const Ladder trimmed({rung(Stage::purchased, Stage::trimmed, fraction(4, 5), {Loss::trim})});
  const Ladder roasted =
      trimmed.with_own_rungs({own(Stage::purchased, Stage::cooked, fraction(7, 10)),
                              own(Stage::cooked, Stage::served, fraction(3, 4))});
  REQUIRE(roasted.rungs().size() == 2);
  CHECK(held(roasted, 0) == std::vector<Loss>{Loss::trim, Loss::cooking});
  CHECK(held(roasted, 1) == std::vector<Loss>{Loss::carving});
}

TEST_CASE("an own rung that ends inside a table's is asked for the one that goes on from it") {
  const Ladder row({rung(Stage::purchased, Stage::cooked, fraction(74, 100), {Loss::cooking})});
  const Problem problem =
      problem_of([&] { row.with_own_rung(Stage::purchased, Stage::trimmed, fraction(9, 10), {}); });
  CHECK(problem.id == "stage-missing");
  CHECK(problem.remedy.find("{from: trimmed, to: cooked, yield: ...}") != std::string::npos);
}

TEST_CASE("a stage that the ladder lacks counts where its loss has happened") {
  const Ladder row({rung(Stage::purchased, Stage::cooked, fraction(3, 4), {Loss::cooking}),
                    rung(Stage::cooked, Stage::served, fraction(4, 5), {Loss::bone})});
  CHECK(row.share_at(Stage::purchased) == 1);
  CHECK(row.share_at(Stage::trimmed) == 1);
  CHECK(row.share_at(Stage::cooked) == fraction(3, 4));
  // Carved meat is off the bone: as much has to be bought as for the plate.
  CHECK(row.share_at(Stage::carved) == fraction(3, 5));
  const Ladder whole({rung(Stage::purchased, Stage::served, fraction(2, 5), {Loss::cooking})});
  CHECK(whole.share_at(Stage::trimmed) == 1);
  CHECK(whole.share_at(Stage::cooked) == fraction(2, 5));
  const Ladder unnamed({rung(Stage::purchased, Stage::cooked, fraction(3, 4), {})});
  CHECK(unnamed.share_at(Stage::trimmed) == 1);
  CHECK(unnamed.share_at(Stage::served) == fraction(3, 4));
}

TEST_CASE("a rung that names no loss takes the bone out where it goes as far as the carving") {
  const auto to = [](Stage end) {
    return Ladder({rung(Stage::purchased, end, fraction(1, 2), {})}, {Loss::bone});
  };
  for (const Stage end : {Stage::trimmed, Stage::cooked}) {
    CHECK(to(end).still_held() == std::vector<Loss>{Loss::bone});
  }
  for (const Stage end : {Stage::carved, Stage::served}) CHECK(to(end).still_held().empty());
}
