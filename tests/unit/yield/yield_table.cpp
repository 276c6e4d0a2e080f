// SPDX-License-Identifier: MIT
#include "platewright/yield/yield_table.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using platewright::test::problem_of;

namespace {

Cut cut(std::string name, std::vector<std::string> names, const Rational& yield) {
  return {std::move(name),
          std::move(names),
          "lamb",
          FoodKind("whole cut"),
          "bone-in",
          "233",
          Ladder({{Stage::purchased, Stage::served, yield, {Loss::bone}, "", {}, {}, false}})};
}

YieldRows built_in() {
  return {{cut("lamb leg, roasted", {"leg of lamb"}, fraction(1, 2)),
           cut("lamb rack, roasted", {"rack of lamb"}, fraction(2, 5))},
          {{"celery, leaves off", {"celery"}, "leaves", fraction(89, 100), {"A", "1"}},
           {"celery, trimmed", {"celery"}, "leaves and stalks", fraction(73, 100), {"B", ""}},
           {"carrots, pared", {"carrot"}, "peel", fraction(82, 100), {}}},
          {{"rice, long grain", {"rice"}, 3, {"C", "2"}, "drained"}}};
}

}  // namespace

TEST_CASE("rows are found by key, by another name, and without minding capitals") {
  const YieldTable table(built_in());
  CHECK(table.cut("lamb leg, roasted").imps == "233");
  CHECK(table.cut("Leg  of Lamb").name == "lamb leg, roasted");
  CHECK(table.produce("celery, leaves off").yield == fraction(89, 100));
  CHECK(table.grain("Rice").yield == 3);
}

TEST_CASE("a name that several rows share is answered with their keys") {
  const YieldTable table(built_in());
  CHECK(table.produce("carrot").trim == "peel");
  const Problem problem = problem_of([&] { table.produce("celery"); });
  CHECK(problem.id == "yield-name-ambiguous");
  CHECK(problem.expected == "one of: \"celery, leaves off\", \"celery, trimmed\"");
}

TEST_CASE("a row of any kind gives its ladder") {
  const YieldTable table(built_in());
  const YieldRow leg = table.row("leg of lamb");
  CHECK(leg.name == "lamb leg, roasted");
  CHECK(leg.kind == YieldKind::cut);
  const YieldRow carrot = table.row("carrot");
  CHECK(carrot.kind == YieldKind::produce);
  CHECK(carrot.ladder.yield_between(Stage::purchased, Stage::trimmed) == fraction(82, 100));
  const YieldRow rice = table.row("rice");
  CHECK(rice.kind == YieldKind::grain);
  CHECK(rice.ladder.yield_between(Stage::purchased, Stage::cooked) == 3);
  CHECK(rice.ladder.rungs().front().source.text == "C");
}

TEST_CASE("a name that is not there is answered with the nearest") {
  const YieldTable table(built_in());
  const Problem problem = problem_of([&] { table.cut("lamb leg, rosted"); });
  CHECK(problem.id == "cut-unknown");
  CHECK(problem.remedy.find("did you mean \"lamb leg, roasted\"") == 0);
  CHECK(problem_of([&] { table.produce("carot"); }).remedy.find("\"carrot\"") != std::string::npos);
  CHECK(problem_of([&] { table.grain("lamb leg, roasted"); }).id == "grain-unknown");
  CHECK(problem_of([&] { table.row("carot"); }).id == "yield-unknown");
  CHECK(problem_of([&] { table.cut("qqqq"); }).remedy.find("platewright tables") !=
        std::string::npos);
}

TEST_CASE("the user's rows win") {
  const YieldTable table(built_in(),
                         {{cut("Lamb Leg, Roasted", {"gigot"}, fraction(3, 5))}, {}, {}});
  CHECK(table.row("lamb leg, roasted").ladder.yield() == fraction(3, 5));
  CHECK(table.row("gigot").ladder.yield() == fraction(3, 5));
  // By the other name of the row that it replaces, too.
  CHECK(table.row("leg of lamb").ladder.yield() == fraction(3, 5));
  CHECK(table.cuts().size() == 2);
  CHECK(table.cuts().front().name == "Lamb Leg, Roasted");
}

TEST_CASE("the user's row wins over a built-in row's other name and over another kind") {
  YieldRows own;
  own.produce.push_back({"rack of lamb", {}, "", fraction(1, 4), {}});
  const YieldTable table(built_in(), own);
  CHECK(table.row("rack of lamb").kind == YieldKind::produce);
  CHECK(table.row("lamb rack, roasted").kind == YieldKind::cut);
}

TEST_CASE("one key twice is refused, a shared other name only when it is asked for") {
  YieldRows rows = built_in();
  rows.cuts.push_back(cut("lamb LEG, roasted", {}, 1));
  CHECK(problem_of([&] { YieldTable{rows}; }).id == "yield-name-twice");
  rows = built_in();
  rows.cuts.push_back(cut("lamb leg, braised", {"leg of lamb"}, fraction(2, 5)));
  const YieldTable table(rows);
  CHECK(table.cut("lamb leg, braised").names.size() == 1);
  CHECK(problem_of([&] { table.cut("leg of lamb"); }).id == "yield-name-ambiguous");
}

TEST_CASE("rows with impossible yields do not get in") {
  YieldRows rows = built_in();
  rows.cuts.push_back(cut("ham", {}, fraction(6, 5)));
  CHECK(problem_of([&] { YieldTable{rows}; }).id == "meat-yield-above-one");
  rows = built_in();
  rows.grains.front().yield = 0;
  CHECK(problem_of([&] { YieldTable{rows}; }).id == "yield-not-positive");
  rows = built_in();
  rows.produce.front().yield = 0;
  CHECK(problem_of([&] { YieldTable{rows}; }).id == "yield-not-positive");
}

TEST_CASE("a cut of the table knows the bone that it is bought with") {
  YieldRows rows;
  rows.cuts.push_back(cut("thigh", {}, fraction(7, 10)));
  rows.cuts.back().ladder = Ladder(
      {{Stage::purchased, Stage::cooked, fraction(7, 10), {Loss::cooking}, "", {}, {}, false}});
  rows.cuts.push_back(rows.cuts.front());
  rows.cuts.back().name = "thigh, boned";
  rows.cuts.back().bought = "boneless";
  const YieldTable table(rows);
  CHECK(table.cut("thigh").ladder.still_held() == std::vector<Loss>{Loss::bone});
  CHECK(table.row("thigh").ladder.still_held() == std::vector<Loss>{Loss::bone});
  CHECK(table.cut("thigh, boned").ladder.still_held().empty());
}
