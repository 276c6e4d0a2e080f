// SPDX-License-Identifier: MIT
#include "platewright/worksheet/kept_tests.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

KeptTests shoulder() {
  return {"shoulder",
          {Stage::purchased, Stage::cooked, Stage::served},
          {{pounds(10), pounds(6), pounds(5)}, {pounds(20), pounds(14), pounds(12)}},
          "roasted",
          "our own trials",
          TrialAverage::mean_of_ratios,
          false};
}

}  // namespace

TEST_CASE("trials become rungs with both averages, number, deviation and range") {
  const KeptResult kept = work_out(shoulder());
  REQUIRE(kept.rungs.size() == 2);
  const KeptRung& cooked = kept.rungs[0];
  CHECK(cooked.trials.mean_of_ratios == fraction(65, 100));
  CHECK(cooked.trials.ratio_of_totals == fraction(2, 3));
  CHECK(cooked.rung.yield == fraction(65, 100));
  CHECK(cooked.rung.spread.samples == 2);
  CHECK(cooked.rung.spread.low == fraction(6, 10));
  CHECK(cooked.rung.spread.high == fraction(7, 10));
  CHECK(cooked.rung.own);
  CHECK(cooked.rung.holds == std::vector<Loss>{Loss::purge, Loss::trim, Loss::cooking});
  CHECK(kept.rungs[1].rung.holds == std::vector<Loss>{Loss::bone, Loss::carving});
  CHECK(kept.ladder.rungs().size() == 2);
}

TEST_CASE("over all steps the mean is of each trial's ratio, not a product of means") {
  const KeptResult kept = work_out(shoulder());
  // 5/10 and 12/20; the steps' means are 65 % and (5/6 + 12/14) / 2
  CHECK(kept.overall.mean_of_ratios == fraction(55, 100));
  CHECK(kept.overall.ratio_of_totals == fraction(17, 30));
  CHECK(kept.ladder.yield() == fraction(65, 100) * fraction(71, 84));
}

TEST_CASE("the ratio of totals is the yield where the kitchen says so") {
  KeptTests tests = shoulder();
  tests.average = TrialAverage::ratio_of_totals;
  CHECK(work_out(tests).rungs[0].rung.yield == fraction(2, 3));
}

TEST_CASE("a step over several stages holds all their losses") {
  KeptTests tests = shoulder();
  tests.stages = {Stage::purchased, Stage::served};
  tests.weighed = {{pounds(10), pounds(5)}};
  const KeptResult kept = work_out(tests);
  CHECK(kept.rungs[0].rung.holds ==
        std::vector<Loss>{Loss::purge, Loss::trim, Loss::cooking, Loss::bone, Loss::carving});
  CHECK_FALSE(kept.rungs[0].trials.standard_deviation.has_value());
}

TEST_CASE("meat that takes up water may weigh more out of the pot") {
  KeptTests tests = shoulder();
  tests.weighed[0][1] = pounds(11);
  tests.water_taken_up = true;
  const KeptResult kept = work_out(tests);
  CHECK(kept.rungs[0].trials.high == fraction(11, 10));
  CHECK(kept.rungs[0].rung.holds.back() == Loss::water_taken_up);
  CHECK(kept.rungs[1].rung.holds.back() == Loss::carving);
}

TEST_CASE("trials without sense are refused") {
  const auto id_with = [](auto change) {
    KeptTests tests = shoulder();
    change(tests);
    return problem_of([&] { work_out(tests); }).id;
  };
  CHECK(id_with([](KeptTests& tests) { tests.stages = {Stage::purchased}; }) ==
        "trial-stages-too-few");
  CHECK(id_with([](KeptTests& tests) { tests.weighed.clear(); }) == "trials-missing");
  CHECK(id_with([](KeptTests& tests) { tests.weighed[1].pop_back(); }) == "trial-weights-differ");
  CHECK(id_with([](KeptTests& tests) { tests.weighed[1][0] = Mass{}; }) == "number-not-positive");
  CHECK(id_with([](KeptTests& tests) { tests.weighed[0][1] = pounds(30); }) ==
        "meat-yield-above-one");
  CHECK(id_with([](KeptTests& tests) { std::swap(tests.stages[0], tests.stages[2]); }) ==
        "stages-out-of-order");
}
