#include "platewright/yield/chosen_row.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using platewright::test::problem_of;

namespace {

Cut cut(std::string name, Stage to, const Rational& yield) {
  return {std::move(name),
          {"rib of beef"},
          "beef",
          "whole cut",
          "bone-in",
          "",
          Ladder({{Stage::purchased, to, yield, {Loss::cooking}, "", {}, {}, false}})};
}

const YieldTable& table() {
  static const YieldTable rows(YieldRows{{cut("rib, roasted, A", Stage::served, fraction(65, 100)),
                                          cut("rib, roasted, B", Stage::served, fraction(60, 100)),
                                          cut("rib, roasted, C", Stage::served, fraction(70, 100)),
                                          cut("rib, roasted, D", Stage::cooked, fraction(50, 100)),
                                          cut("rib, braised", Stage::served, fraction(55, 100))},
                                         {},
                                         {}});
  return rows;
}

}  // namespace

TEST_CASE("the careful row has the lowest yield and the middle one stands between") {
  const ChosenRow careful = choose_cut(table(), "rib roasted", RowChoice::careful);
  CHECK(careful.row.name == "rib, roasted, B");
  // The row that ends at the oven can't be compared with those that end at the plate.
  REQUIRE(careful.among.size() == 3);
  CHECK(careful.among.back().name == "rib, roasted, C");
  CHECK(choose_cut(table(), "rib roasted", RowChoice::middle).row.name == "rib, roasted, A");
}

TEST_CASE("of an even number the lower middle row is taken") {
  CHECK(choose_cut(table(), "Rib of Beef", RowChoice::middle).row.name == "rib, roasted, B");
  CHECK(choose_cut(table(), "rib of beef", RowChoice::careful).row.name == "rib, braised");
}

TEST_CASE("rows that continue the name asked for come before rows that only have its words") {
  const ChosenRow chosen = choose_cut(table(), "Rib, Roasted", RowChoice::careful);
  CHECK(chosen.among.size() == 3);
  CHECK(choose_cut(table(), "rib", RowChoice::careful).row.name == "rib, braised");
  CHECK(choose_cut(table(), "rib, roasted, C", RowChoice::careful).among.size() == 1);
}

TEST_CASE("words that no cut has are answered with the nearest names") {
  const Problem problem =
      problem_of([] { choose_cut(table(), "rib, braisd", RowChoice::careful); });
  CHECK(problem.id == "cut-unknown");
  CHECK(problem.remedy.find("rib, braised") != std::string::npos);
}
