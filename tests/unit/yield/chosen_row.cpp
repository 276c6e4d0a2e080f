// SPDX-License-Identifier: MIT
#include "platewright/yield/chosen_row.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using platewright::test::problem_of;

namespace {

Cut cut(std::string name, const char* goods, const char* method, const Rational& yield,
        std::vector<Loss> holds = {Loss::cooking, Loss::bone}) {
  const Stage to = holds.size() > 1 ? Stage::served : Stage::cooked;
  return {std::move(name),
          {},
          "beef",
          FoodKind("whole cut"),
          "bone-in",
          "",
          Ladder({{Stage::purchased, to, yield, std::move(holds), method, {}, {}, false}}),
          goods,
          ""};
}

/// The same row with other names.
Cut called(Cut row, std::vector<std::string> names) {
  row.names = std::move(names);
  return row;
}

const YieldTable& table() {
  static const std::vector<Loss> skin_off{Loss::cooking, Loss::bone, Loss::skin};
  static const YieldTable rows(YieldRows{
      {called(cut("rib, roasted, A", "rib", "roasted", fraction(65, 100)), {"rib of beef"}),
       cut("rib, roasted, B", "rib", "roasted", fraction(60, 100)),
       cut("rib, roasted, C", "rib", "roasted", fraction(70, 100)),
       cut("rib, roasted, D", "rib", "roasted", fraction(50, 100), {Loss::cooking}),
       cut("rib, braised", "rib", "braised or stewed", fraction(55, 100)),
       called(cut("bird, roasted", "bird", "roasted", fraction(54, 100)), {"bird", "roast bird"}),
       cut("bird, roasted, no giblets", "bird", "roasted", fraction(39, 100)),
       called(cut("bird, roasted, picked", "bird", "roasted", fraction(32, 100), skin_off),
              {"picked bird"}),
       called(cut("bird back, roasted", "bird back", "roasted", fraction(20, 100)), {}),
       called(cut("thigh, roasted", "thigh", "roasted", fraction(69, 100), {Loss::cooking}),
              {"thighs"}),
       cut("thigh, braised", "thigh", "braised", fraction(57, 100)),
       cut("thigh, simmered", "thigh", "simmered", fraction(56, 100)),
       called(cut("neck, roasted", "", "roasted", fraction(70, 100), {Loss::cooking}), {"necks"})},
      {},
      {}});
  return rows;
}

}  // namespace

TEST_CASE("the careful row has the lowest yield and the middle one stands between") {
  const ChosenRow careful = choose_cut(table(), "rib roasted", RowChoice::careful);
  CHECK(careful.row.name == "rib, roasted, B");
  // The row that still holds the bone can't be compared with those that end at the plate.
  REQUIRE(careful.among.size() == 3);
  CHECK(careful.among.back().name == "rib, roasted, C");
  CHECK(choose_cut(table(), "rib roasted", RowChoice::middle).row.name == "rib, roasted, A");
}

TEST_CASE("of an even number the lower middle row is taken") {
  CHECK(choose_cut(table(), "rib", RowChoice::middle).row.name == "rib, roasted, B");
}

TEST_CASE("a choice stays with the goods and the method of the row that is named") {
  const ChosenRow bird = choose_cut(table(), "Bird", RowChoice::careful);
  CHECK(bird.row.name == "bird, roasted, no giblets");
  CHECK(bird.among.size() == 2);
  CHECK(choose_cut(table(), "rib of beef", RowChoice::careful).row.name == "rib, roasted, B");
  const ChosenRow any = choose_cut(table(), "rib of beef", RowChoice::careful, RowMethods::any);
  CHECK(any.row.name == "rib, braised");
  CHECK(any.among.size() == 4);
}

TEST_CASE("rows that continue the name asked for come before rows that only have its words") {
  CHECK(choose_cut(table(), "Rib, Roasted", RowChoice::careful).among.size() == 3);
  CHECK(choose_cut(table(), "rib", RowChoice::careful).row.name == "rib, braised");
}

TEST_CASE("a plain name means the careful row, a key its own") {
  CHECK(table().cut("roast bird").name == "bird, roasted, no giblets");
  CHECK(table().cut("bird, roasted").name == "bird, roasted");
  CHECK(table().row("BIRD").name == "bird, roasted, no giblets");
  // What is served without the skin is another thing, careful or not.
  CHECK(table().cut("picked bird").name == "bird, roasted, picked");
}

TEST_CASE("a row that lies further than five points away is far apart") {
  CHECK(lies_far_apart(row_named(table(), "bird, roasted")));
  CHECK(lies_far_apart(row_named(table(), "bird")));
  CHECK(row_named(table(), "bird").among.size() == 2);
  // 65 % lies five points from 60 and from 70 % and no more; the row with the bone does not count.
  CHECK_FALSE(lies_far_apart(row_named(table(), "rib, roasted, A")));
  CHECK(lies_far_apart(row_named(table(), "rib, roasted, C")));
}

TEST_CASE("where the bone is still in the weight, the careful row that takes it out is named") {
  const ChosenRow thigh = row_named(table(), "thigh, roasted");
  CHECK(thigh.row.name == "thigh, roasted");
  REQUIRE(thigh.takes_out);
  CHECK(thigh.takes_out->name == "thigh, simmered");
  CHECK_FALSE(row_named(table(), "thigh, braised").takes_out);
  // The plain name goes to it, though it is cooked in another way.
  CHECK(table().cut("thighs").name == "thigh, simmered");
  // Of a row of the same method first.
  CHECK(row_named(table(), "rib, roasted, D").takes_out->name == "rib, roasted, B");
  // No row takes it out.
  CHECK(table().cut("necks").name == "neck, roasted");
  CHECK_FALSE(row_named(table(), "necks").takes_out);
  CHECK(row_named(table(), "necks").row.ladder.still_held() == std::vector<Loss>{Loss::bone});
}

TEST_CASE("produce is named with its other trims, and keeps its own") {
  const YieldTable rows({{},
                         {{"celery, leaves off", {"celery"}, "leaves", fraction(89, 100), {}},
                          {"celery, trimmed", {}, "leaves and stalks", fraction(73, 100), {}},
                          {"celeriac, peeled", {}, "peel", fraction(86, 100), {}}},
                         {{"rice", {}, 3, {}, ""}}});
  const ChosenRow celery = row_named(rows, "celery");
  CHECK(celery.row.name == "celery, leaves off");
  REQUIRE(celery.among.size() == 2);
  CHECK(celery.among.front().name == "celery, trimmed");
  CHECK(lies_far_apart(celery));
  CHECK_FALSE(lies_far_apart(row_named(rows, "celeriac, peeled")));
  CHECK(row_named(rows, "rice").among.empty());
}

TEST_CASE("words that no cut has are answered with the nearest names") {
  const Problem problem =
      problem_of([] { choose_cut(table(), "rib, braisd", RowChoice::careful); });
  CHECK(problem.id == "cut-unknown");
  CHECK(problem.remedy.find("rib, braised") != std::string::npos);
}
