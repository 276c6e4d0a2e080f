// SPDX-License-Identifier: MIT
#include "platewright/heat/lethality.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/roast_terms.hpp"
#include "support/safety_rows.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// A reading every five minutes.
CoreCurve every_five(const std::vector<Rational>& degrees) {
  std::vector<CoreReading> readings;
  for (const Rational& at : degrees) {
    readings.push_back({minutes(5 * static_cast<int>(readings.size())), fahrenheit(at)});
  }
  return CoreCurve::of(std::move(readings));
}

LethalityStandard small_table() {
  return {"a table",
          "meat",
          "7 log",
          {},
          "",
          {{fahrenheit(130), minutes(20)}, {fahrenheit(135), minutes(10)}, {fahrenheit(158), {}}}};
}

}  // namespace

TEST_CASE("the time between two readings counts at the lower of the two") {
  // Above 130 F at three readings, so for two spaces of five minutes.
  const LethalityCheck check =
      check_lethality(every_five({120, 131, 134, 131, 120}), small_table());
  CHECK(check.steps[0].held == minutes(10));
  CHECK(check.steps[0].missing() == minutes(10));
  CHECK_FALSE(check.met());
  REQUIRE(check.nearest());
  CHECK(check.nearest()->step.at == fahrenheit(130));
}

TEST_CASE("a temperature between two steps counts for the lower one, and nothing is added up") {
  // 134.9 F is no 135 F; 15 min at 130 F and 5 min at 135 F are three quarters and a half.
  CHECK(check_lethality(every_five({fraction(1349, 10), fraction(1349, 10), fraction(1349, 10)}),
                        small_table())
            .steps[1]
            .held == minutes(0));
  CHECK_FALSE(check_lethality(every_five({130, 130, 135, 135}), small_table()).met());
}

TEST_CASE("a stretch that is broken begins anew") {
  CHECK_FALSE(
      check_lethality(every_five({131, 131, 131, 129, 131, 131, 131}), small_table()).met());
  const LethalityCheck check =
      check_lethality(every_five({131, 129, 131, 131, 131, 131, 131}), small_table());
  REQUIRE(check.met());
  CHECK(check.met()->met == minutes(30));
  CHECK_FALSE(check.nearest());
}

TEST_CASE("a hold of nothing is met by one reading") {
  const LethalityCheck check = check_lethality(every_five({120, 158, 120}), small_table());
  REQUIRE(check.met());
  CHECK(check.met()->step.at == fahrenheit(158));
  CHECK(check.met()->met == minutes(5));
}

TEST_CASE("a curve below the table reaches no step") {
  const LethalityCheck check = check_lethality(every_five({120, 129}), small_table());
  CHECK_FALSE(check.met());
  CHECK_FALSE(check.nearest());
}

TEST_CASE("the holds of whole roasts are the safety table's own") {
  const LethalityStandard standard = roast_standard(safety_rows());
  REQUIRE(standard.steps.size() == safety_rows().roast_holds.size());
  CHECK(standard.steps.front().hold == minutes(112));
  CHECK(standard.row == "3-401.11(B)");
}

TEST_CASE("fat between two tables takes the longer hold of the two") {
  const auto table = [](const Rational& fat, int first, int second) {
    return LethalityStandard{
        "a table", "turkey",
        "7 log",   fat,
        "",        {{fahrenheit(150), minutes(first)}, {fahrenheit(151), minutes(second)}}};
  };
  // As printed tables do here and there, the second hold falls as the fat rises.
  const std::vector<LethalityStandard> standards{table(fraction(1, 100), 10, 9),
                                                 table(fraction(2, 100), 11, 8), small_table()};
  const auto between = standard_for(standards, "turkey", "7 log", fraction(3, 200));
  CHECK(between.steps[0].hold == minutes(11));
  CHECK(between.steps[1].hold == minutes(9));
  CHECK(standard_for(standards, "turkey", "7 log", fraction(2, 100)).steps[1].hold == minutes(8));
  CHECK(standard_for(standards, "turkey", "7 log", Rational(0)).steps[0].hold == minutes(10));
  CHECK(standard_for(standards, "meat", "7 log", std::nullopt).steps[0].hold == minutes(20));
  const auto problem = [&](const char* food, const std::optional<Rational>& fat) {
    return problem_of([&] { standard_for(standards, food, "7 log", fat); }).id;
  };
  CHECK(problem("turkey", fraction(21, 1000)) == "fat-beyond-table");
  CHECK(problem("turkey", std::nullopt) == "fat-not-stated");
  CHECK(problem("meat", fraction(1, 20)) == "fat-not-asked");
  CHECK(problem("goose", std::nullopt) == "word-unknown");
}
