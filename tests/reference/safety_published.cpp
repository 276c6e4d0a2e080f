// SPDX-License-Identifier: MIT
// The built-in minimums and limits against the paragraphs of the FDA Food Code 2022 and the chart
// of USDA FSIS that they come from, typed in once more.

#include <string>

#include "platewright/book/tables.hpp"
#include "platewright/safety/pull_temperature.hpp"
#include "platewright/safety/roast_oven.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::the_tables;

namespace {

PullCheck check(const char* key, int degrees) {
  return check_pull_temperature(FoodKind(key), Temperature::fahrenheit(degrees), std::nullopt,
                                the_tables().safety);
}

RoastOvenCheck roast_oven(int pounds, int degrees) {
  return check_roast_oven({Temperature::fahrenheit(degrees)}, Mass::of(pounds, units::pound),
                          the_tables().safety)
      .value();
}

}  // namespace

TEST_CASE("the oven of a whole meat roast") {
  // FDA Food Code 2022, 3-401.11(B)(2), the table of ovens: still, dry 350 F under 10 lb and 250 F
  // from 10 lb on; convection 325 F and 250 F; high humidity 250 F or less for either.
  CHECK(roast_oven(9, 350).still_meets);
  CHECK_FALSE(roast_oven(9, 349).still_meets);
  CHECK(roast_oven(9, 325).convection_meets);
  CHECK_FALSE(roast_oven(9, 324).convection_meets);
  CHECK(roast_oven(10, 250).still_meets);
  CHECK(roast_oven(10, 250).convection_meets);
  CHECK_FALSE(roast_oven(10, 249).still_meets);
  CHECK(roast_oven(9, 250).humid_meets);
  CHECK_FALSE(roast_oven(9, 251).humid_meets);
}

TEST_CASE("the minimums of food service") {
  // FDA Food Code 2022, 3-401.11(A)(1) to (3)
  CHECK(check("whole cut", 145).advisory == Advisory::not_needed);
  CHECK(check("fish", 145).advisory == Advisory::not_needed);
  CHECK(check("fish", 144).advisory == Advisory::needed);
  CHECK(check("ground", 155).advisory == Advisory::not_needed);
  CHECK(check("ground", 154).advisory == Advisory::cook_on);
  CHECK(check("injected or tenderised", 154).advisory == Advisory::cook_on);
  CHECK(check("poultry", 165).advisory == Advisory::not_needed);
  CHECK(check("poultry", 164).advisory == Advisory::cook_on);
  CHECK(check("stuffed", 164).advisory == Advisory::cook_on);
  CHECK(check("game", 164).advisory == Advisory::cook_on);
}

TEST_CASE("fish that is minced, and game by whether it was raised") {
  // FDA Food Code 2022, 3-401.11(A)(2): fish, meat and game raised for food or inspected at 155 F
  // for 17 s where they are comminuted; (A)(1)(b): such game whole at 145 F for 15 s; (A)(3): wild
  // game at 165 F.
  CHECK(check("minced fish", 155).advisory == Advisory::not_needed);
  CHECK(check("minced fish", 154).advisory != Advisory::not_needed);
  CHECK(check("game, raised", 145).advisory == Advisory::not_needed);
  CHECK(check("game, raised", 144).advisory != Advisory::not_needed);
  CHECK(check("ground game, raised", 155).advisory == Advisory::not_needed);
  CHECK(check("ground game, raised", 154).advisory == Advisory::cook_on);
  CHECK(check("game", 155).advisory == Advisory::cook_on);
  const auto& minimums = the_tables().safety.minimums_for(FoodKind("minced fish"));
  REQUIRE_FALSE(minimums.empty());
  CHECK(minimums.front().hold == Duration::of(17, units::second));
}

TEST_CASE("steaks that are intact, roasts that are left, allergens that are told") {
  // FDA Food Code 2022, 3-401.11(C): 145 F on the surface, top and bottom.
  const auto steak = the_tables().safety.limit("intact steak, surface");
  REQUIRE(steak.has_value());
  CHECK(steak->temperature->at == Temperature::fahrenheit(145));
  CHECK(steak->row == "3-401.11(C)");
  // 3-403.11(E): by the oven and the holds of 3-401.11(B), the lowest of which is 130 F.
  const auto roast = the_tables().safety.limit("reheating, roast");
  REQUIRE(roast.has_value());
  CHECK(roast->temperature->at == the_tables().safety.roast_holds.front().at);
  CHECK(the_tables().safety.roast_holds.front().hold == Duration::of(112, units::minute));
  // 3-602.12(C): in writing; no figure.
  const auto told = the_tables().safety.limit("allergens, unpackaged");
  REQUIRE(told.has_value());
  CHECK_FALSE(told->temperature.has_value());
  CHECK(told->note.find("in writing") != std::string::npos);
}

TEST_CASE("how long food may be neither hot nor cold") {
  // FDA Food Code 2022, 3-501.19(B): 4 h from 135 F or above
  const auto limit = the_tables().safety.limit("time as control, hot");
  REQUIRE(limit.has_value());
  CHECK(limit->within == Duration::of(4, units::hour));
  CHECK(limit->temperature->at == Temperature::fahrenheit(135));
}

TEST_CASE("every built-in cut is of a kind that has a minimum") {
  for (const Cut& cut : built_in_yields().cuts) {
    INFO(cut.name);
    CHECK_FALSE(the_tables().safety.minimums_for(cut.safety.value()).empty());
  }
}

TEST_CASE("allergens by the names that cooks write") {
  // The keys are those of 21 U.S.C. 321(qq) and of Regulation (EU) 1169/2011, Annex II; the
  // everyday names: common practice, no source.
  const AllergenTable& table = the_tables().allergens;
  CHECK(table.key_for("Shrimps") == "crustaceans");
  CHECK(table.key_for("mollusk") == "molluscs");
  CHECK(table.key_for("scallop") == "molluscs");
  CHECK(table.key_for("tree nut") == "tree nuts");
  CHECK(table.key_for("cashew nuts") == "tree nuts");
  CHECK(table.key_for("egg yolks") == "eggs");
  CHECK(table.key_for("oat") == "cereals containing gluten");
}

TEST_CASE("which way from a limit is safe stands with each of them") {
  // FDA Food Code 2022: 3-501.16 (hot, cold), 3-501.14 (cooling), 3-403.11 (reheating).
  const SafetyTable& table = the_tables().safety;
  for (const char* key : {"hot holding", "hot holding, roast", "reheating", "reheating, roast",
                          "oven, still, small roast", "time as control, hot"}) {
    INFO(key);
    CHECK(table.limit(key).value().temperature.value().bound == Bound::at_least);
  }
  for (const char* key : {"cold holding", "cooling", "cooling, first step", "thawing, refrigerator",
                          "oven, humid", "date mark", "parasites", "time as control"}) {
    INFO(key);
    CHECK(table.limit(key).value().temperature.value().bound == Bound::at_most);
  }
}

TEST_CASE("what may be served below its minimum is what the Food Code lets be, and nothing else") {
  // FDA Food Code 2022, 3-401.11(B) and (D), 3-603.11.
  const SafetyTable& table = the_tables().safety;
  for (const char* kind : {"poultry", "ground", "stuffed", "injected or tenderised", "game",
                           "minced fish", "ground game, raised", "leftovers", "casserole"}) {
    INFO(kind);
    CHECK_FALSE(table.minimums_for(FoodKind(kind)).empty());
    CHECK(table.undercooked(FoodKind(kind)) == Undercooked::never);
  }
  CHECK(table.undercooked(FoodKind("whole cut")) == Undercooked::held_or_advised);
  CHECK(table.undercooked(FoodKind("fish")) == Undercooked::advised);
  for (const UndercookedKind& row : table.undercooked_kinds) {
    INFO(row.kind.key());
    CHECK_FALSE(table.minimums_for(row.kind).empty());
  }
}
