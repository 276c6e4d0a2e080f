// SPDX-License-Identifier: MIT
// What a plain name buys, and what is said where the bone is still in the weight, on figures of the
// two tables of the US Department of Agriculture: Table of Cooking Yields for Meat and Poultry,
// Release 2 (2014), and SR28 (2016), WEIGHT and refuse.

#include <algorithm>

#include "platewright/book/tables.hpp"
#include "platewright/yield/chosen_row.hpp"
#include "platewright/yield/portions.hpp"
#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

const YieldTable& table() {
  static const YieldTable rows(built_in_yields());
  return rows;
}

/// Pounds to buy for 84 portions of 6 oz: portions x ounces / 16 / yield.
Rational pounds_for_84(const Ladder& ladder) {
  return weight_to_buy(ladder, 84, ounces(6)).purchased / pounds(1);
}

}  // namespace

TEST_CASE("chicken thighs and drumsticks are bought by the row that knows the bone") {
  // Release 2: a thigh cooks to 69 %, a drumstick to 76 %, with the bone in both weights.
  const Ladder& thigh = table().cut("chicken thigh, bone-in, skin on, roasted").ladder;
  CHECK(as_decimal(pounds_for_84(thigh), 2) == as_decimal(fraction(63, 2) / printed("0.69"), 2));
  CHECK(thigh.still_held() == std::vector<Loss>{Loss::bone});
  // Release 2 and SR28, NDB 05096: simmered 74 %, of which 24 % is bone.
  const Cut& thighs = table().cut("chicken thighs");
  CHECK(thighs.ladder.yield() == printed("0.74") * printed("0.76"));
  CHECK(as_decimal(pounds_for_84(thighs.ladder), 1) == "56.0");
  CHECK(row_named(table(), "chicken thigh, bone-in, skin on, roasted").takes_out->name ==
        thighs.name);
  // Release 2 and SR28, NDB 05676: braised 77 %, of which 32 % is bone.
  const Cut& drumsticks = table().cut("drumsticks");
  CHECK(drumsticks.ladder.yield() == printed("0.77") * printed("0.68"));
  CHECK(as_decimal(pounds_for_84(drumsticks.ladder), 1) == "60.2");
}

TEST_CASE("the plain names of a chicken mean the whole chain without giblets") {
  // SR28: 178 g of meat and skin from a pound as purchased (NDB 05009), 205 g with giblets and neck
  // (NDB 05004); 78 % cooked of which 69 % is edible by the two tables together.
  for (const char* name : {"chicken", "whole chicken", "roast chicken", "whole roast chicken"}) {
    INFO(name);
    const ChosenRow chosen = row_named(table(), name);
    CHECK(chosen.row.ladder.yield() == Rational(178) / printed("453.59"));
    CHECK(lies_far_apart(chosen));
    REQUIRE(chosen.among.size() == 3);
    CHECK(chosen.among[1].ladder.yield() == Rational(205) / printed("453.59"));
    CHECK(chosen.among[2].ladder.yield() == printed("0.78") * printed("0.69"));
    // Nor does the choice among them take a back or a wing.
    CHECK(choose_cut(table(), name, RowChoice::careful).row.name == chosen.row.name);
  }
  // SR28, NDB 05013 and 05014: 146 g and 157 g picked, without the skin.
  CHECK(table().cut("picked chicken").ladder.yield() == Rational(146) / printed("453.59"));
}

TEST_CASE("every plain name of the tables means a row that none of its kind undercuts") {
  int names = 0;
  for (const Cut& cut : table().cuts()) {
    for (const std::string& name : cut.names) {
      INFO(name);
      ++names;
      const Cut& meant = table().cut(name);
      CHECK(goods_of(meant) == goods_of(cut));
      for (const Cut* other : table().like(cut, false)) {
        if (!other->ladder.still_held().empty()) continue;
        CHECK(meant.ladder.still_held().empty());
        if (cooked_alike(meant, cut)) CHECK(meant.ladder.yield() <= other->ladder.yield());
      }
    }
  }
  CHECK(names > 250);
}

TEST_CASE("whatever is bought with a bone takes it out, or a sheet says that it is in the weight") {
  std::vector<std::string> with_bone;
  for (const Cut& cut : table().cuts()) {
    if (!cut.ladder.still_held().empty()) with_bone.push_back(cut.name);
    if (cut.bought == "bone-in" || cut.bought == "whole bird" || cut.bought == "part") {
      CHECK(cut.ladder.holds(Loss::bone) != !cut.ladder.still_held().empty());
    }
  }
  CHECK(with_bone.size() == 11);
  // SR28 prints refuse for four of them that looks like a bone counted twice (NDB 05069, 05094,
  // 05689, 05692), and for one in parts that do not add up (NDB 10031): said, and not used.
  CHECK(std::count_if(with_bone.begin(), with_bone.end(), [](const std::string& name) {
          return table().cut(name).note.find("it is not used") != std::string::npos;
        }) == 5);
  for (const Cut& cut : table().cuts()) {
    for (const Rung& rung : cut.ladder.rungs()) {
      if (rung.source.text.find("refuse of the cooked cut") == std::string::npos) continue;
      for (const char* doubtful : {"05069", "05094", "05689", "05692", "10031"}) {
        CHECK(rung.source.row.find(doubtful) == std::string::npos);
      }
    }
  }
}
