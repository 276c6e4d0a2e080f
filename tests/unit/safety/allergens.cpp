// SPDX-License-Identifier: MIT
#include "platewright/safety/allergens.hpp"

#include "support/allergen_rows.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("an allergen is found by key, by a law's name and by a food's") {
  const AllergenTable table = allergen_rows();
  CHECK(table.key_for("milk") == "milk");
  CHECK(table.key_for("Crustacean  Shellfish") == "crustaceans");
  CHECK(table.key_for("Butter") == "milk");
  CHECK(table.key_for("lactose") == "milk");
}

TEST_CASE("an unknown allergen gets the nearest names") {
  const Problem problem = problem_of([] { (void)allergen_rows().key_for("crustacans"); });
  CHECK(problem.id == "name-unknown");
  CHECK(problem.remedy ==
        "did you mean \"crustaceans\"? If not, list them with `platewright tables allergens`");
}

TEST_CASE("a word wider than one allergen is never taken for one of them") {
  // 21 U.S.C. 321(qq) parts tree nuts from peanuts and crustaceans from fish; Regulation (EU)
  // 1169/2011, Annex II, parts molluscs from crustaceans.
  const AllergenTable table({{"tree nuts", "us", "tree nuts", {"hazelnut"}, {}, true, ""},
                             {"peanuts", "us", "peanuts", {"peanut"}, {}, false, ""},
                             {"fish", "us", "fish", {"cod"}, {}, true, ""},
                             {"crustaceans", "eu", "crustaceans", {"crab"}, {}, true, ""},
                             {"molluscs", "eu", "molluscs", {"squid"}, {}, false, ""}});
  const auto remedy = [&](const char* text) {
    return problem_of([&] { (void)table.key_for(text); }).remedy;
  };
  CHECK(remedy("nut") == "say which: \"tree nuts\", \"peanuts\", or all that are in it");
  CHECK(remedy("Nut  butter") == remedy("nut"));
  CHECK(remedy("shell fish") == "say which: \"crustaceans\", \"molluscs\", or all that are in it");
  CHECK(remedy("shellfish") == remedy("shell fish"));
  CHECK(remedy("shelfish") == remedy("shell fish"));
  CHECK(remedy("seafood") ==
        "say which: \"fish\", \"crustaceans\", \"molluscs\", or all that are in it");
  CHECK(table.key_for("hazelnut") == "tree nuts");
  CHECK(remedy("hazelnutt") ==
        "did you mean \"hazelnut\"? If not, list them with `platewright tables allergens`");
}

TEST_CASE("two laws share a key") {
  const auto rows = allergen_rows().rows_of("milk");
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].scheme == "us");
  CHECK(rows[1].scheme == "eu");
}

TEST_CASE("what comes with an allergen is added") {
  CHECK(allergen_rows().with_implied({"wheat", "milk"}) ==
        std::set<std::string>{"cereals containing gluten", "milk", "wheat"});
  CHECK(allergen_rows().with_implied({"milk"}) == std::set<std::string>{"milk"});
}

TEST_CASE("allergens that imply each other in a circle come to an end") {
  const AllergenTable table(
      {{"a", "us", "a", {}, {"b"}, false, ""}, {"b", "us", "b", {}, {"c", "a"}, false, ""}});
  CHECK(table.with_implied({"a"}) == std::set<std::string>{"a", "b", "c"});
}
