// SPDX-License-Identifier: MIT
#include "platewright/worksheet/handbook_cut.hpp"

#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Rung rung(Stage from, Stage to, std::vector<Loss> holds) {
  Rung out;
  out.from = from;
  out.to = to;
  out.yield = fraction(3, 4);
  out.holds = std::move(holds);
  return out;
}

Cut cut(const char* name, const char* bought, std::vector<Rung> rungs) {
  Cut out;
  out.name = name;
  out.bought = bought;
  out.ladder = Ladder(std::move(rungs), held_as_bought(bought));
  return out;
}

std::optional<TrimTestResult> trimmed_of(const char* waste) {
  return work_out(TrimTest{"rib",
                           pounds(10),
                           per_pound("9.00"),
                           std::nullopt,
                           {TrimPart::usable("rib", pounds(8)), TrimPart::waste(waste, pounds(2))},
                           std::nullopt});
}

std::optional<CookingLossResult> cooked_with(const Mass& bones_and_trim) {
  return work_out(CookingLossTest{"rib", pounds(8), TrimmedCost::from_invoice(money("90")),
                                  per_pound("9.00"), pounds(6), bones_and_trim, std::nullopt,
                                  std::nullopt});
}

bool is_other(const Cut& row, const Rung& compared, const TestedBone& tested,
              bool from_oven_ready = false) {
  HandbookComparison comparison;
  comparison.rung = compared;
  comparison.from_oven_ready = from_oven_ready;
  return is_of_another_cut(comparison, row, tested);
}

}  // namespace

TEST_CASE("a name says how the goods are bought in a part of its own alone") {
  CHECK(bought_in("lamb leg, bone-in") == "bone-in");
  CHECK(bought_in("beef rib roast, boneless, lip-on") == "boneless");
  CHECK(bought_in("lamb leg, bone-in or not").empty());
  CHECK(bought_in("boneless ham").empty());
  CHECK(bought_in("crab, in the shell") == "in the shell");
}

TEST_CASE("a bone that was cut off says that the goods had one") {
  CHECK(tested_bone("", trimmed_of("neck bone"), std::nullopt).purchased == true);
  CHECK(tested_bone("", trimmed_of("Bones, sinew"), std::nullopt).purchased == true);
  CHECK_FALSE(tested_bone("", trimmed_of("bonemeal"), std::nullopt).purchased);
  CHECK_FALSE(tested_bone("", trimmed_of("fat"), std::nullopt).purchased);
  CHECK(tested_bone("boneless", trimmed_of("fat"), std::nullopt).purchased == false);
}

TEST_CASE("what goes into the oven has the bone unless all of it was cut off") {
  CHECK(tested_bone("bone-in", std::nullopt, cooked_with(pounds(1))).oven_ready == true);
  CHECK(tested_bone("bone-in", trimmed_of("fat"), cooked_with(pounds(1))).oven_ready == true);
  CHECK(tested_bone("bone-in", trimmed_of("bone"), cooked_with(Mass{})).oven_ready == false);
  // Some cut off and some left, or only trim left: nobody knows.
  CHECK_FALSE(tested_bone("bone-in", trimmed_of("bone"), cooked_with(pounds(1))).oven_ready);
}

TEST_CASE("a rung is of another cut where one of the two has the bone") {
  const Rung roast = rung(Stage::purchased, Stage::cooked, {Loss::cooking});
  const Cut bone_in = cut("rib, bone-in", "bone-in", {roast});
  const Cut boneless = cut("rib, boneless", "boneless", {roast});
  const Cut unsaid = cut("rib", "", {roast});
  const TestedBone with{true, true};
  const TestedBone cut_off{true, false};
  CHECK_FALSE(is_other(bone_in, roast, with));
  CHECK(is_other(boneless, roast, with));
  CHECK_FALSE(is_other(unsaid, roast, with));
  CHECK_FALSE(is_other(boneless, roast, TestedBone{}));
  // From the oven on, what was cut off before it is not there any more.
  CHECK(is_other(bone_in, roast, cut_off, true));
  CHECK_FALSE(is_other(boneless, roast, cut_off, true));
}

TEST_CASE("a row that takes the bone out first is boneless in the oven") {
  const Rung trim = rung(Stage::purchased, Stage::trimmed, {Loss::trim, Loss::bone});
  const Rung roast = rung(Stage::trimmed, Stage::cooked, {Loss::cooking});
  const Cut row = cut("rib, bone-in", "bone-in", {trim, roast});
  CHECK_FALSE(is_other(row, trim, {true, false}));
  CHECK_FALSE(is_other(row, roast, {true, false}));
  CHECK(is_other(row, roast, {true, true}));
  CHECK(is_other(row, trim, {false, false}));
}

TEST_CASE("the row to take instead differs in how the goods are bought alone") {
  const Rung roast = rung(Stage::purchased, Stage::cooked, {Loss::cooking});
  YieldRows rows;
  rows.cuts = {cut("rib, bone-in, roasted", "bone-in", {roast}),
               cut("rib, boneless, braised", "boneless", {roast}),
               cut("rib, boneless, roasted", "boneless", {roast})};
  const YieldTable table(rows);
  CHECK(bought_otherwise(table, table.cut("rib, bone-in, roasted")) == "rib, boneless, roasted");
  CHECK(bought_otherwise(table, table.cut("rib, boneless, braised")).empty());
}
