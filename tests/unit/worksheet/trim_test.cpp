// SPDX-License-Identifier: MIT
#include "platewright/worksheet/trim_test.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// 10 lb at 6.00: 6 lb usable, 2 lb of stew meat at 3.00, 1 lb of waste, 1 lb lost.
TrimTest trimmed_shoulder() {
  return {"lamb shoulder",
          pounds(10),
          per_pound("6.00"),
          std::nullopt,
          {TrimPart::usable("roast", pounds(6)),
           TrimPart::by_product("stew meat", pounds(2), per_pound("3.00")),
           TrimPart::waste("bone", pounds(1)), TrimPart::cutting_loss(pounds(1))},
          ounces(8)};
}

}  // namespace

TEST_CASE("a trim test shows every step") {
  const TrimTestResult result = work_out(trimmed_shoulder());
  CHECK(result.invoice == money("60.00"));
  CHECK(result.labour == Money{});
  CHECK(result.usable == pounds(6));
  CHECK(result.trim == pounds(4));
  CHECK(result.yield == fraction(3, 5));
  CHECK(result.credits == money("6.00"));
  CHECK(result.net_cost == money("54.00"));
  CHECK(for_a_pound(result.cost_per_weight) == 9);
  CHECK(result.cost_factor == fraction(3, 2));
  REQUIRE(result.portion.has_value());
  CHECK(result.portion->cost == money("4.50"));
  CHECK(result.portion->factor == ounces(12));
  REQUIRE(result.lines.size() == 4);
  CHECK(result.lines[0].value == money("54.00"));
  CHECK(for_a_pound(result.lines[0].value_per_weight) == 9);
  CHECK(result.lines[1].share == fraction(1, 5));
  CHECK(result.lines[1].value == money("6.00"));
  CHECK(result.lines[3].kind == PartKind::cutting_loss);
}

TEST_CASE("the factors carry the cost to another purchase price") {
  const TrimTestResult result = work_out(trimmed_shoulder());
  CHECK(for_a_pound(result.cost_per_weight_at(per_pound("8.00"))) == 12);
  CHECK(result.portion->at(per_pound("8.00")) == money("6.00"));
}

TEST_CASE("the price may be that of the whole piece") {
  TrimTest test = trimmed_shoulder();
  test.price = money("60.00");
  const TrimTestResult result = work_out(test);
  CHECK(for_a_pound(result.purchase_price) == 6);
  CHECK(result.net_cost == money("54.00"));
}

TEST_CASE("labour is paid on the purchased weight and is not part of the purchase price") {
  TrimTest test = trimmed_shoulder();
  test.labour = per_pound("0.60");
  const TrimTestResult result = work_out(test);
  CHECK(result.labour == money("6.00"));
  CHECK(result.total_cost == money("66.00"));
  CHECK(for_a_pound(result.cost_per_weight) == 10);
  CHECK(result.cost_factor == fraction(10, 6));
}

TEST_CASE("parts that do not add up are reported with the difference") {
  TrimTest test = trimmed_shoulder();
  test.parts[0].weight = pounds(6, 8);
  Problem problem = problem_of([&] { work_out(test); });
  CHECK(problem.id == "parts-above-whole");
  CHECK(problem.found.find("226.8 g (8 oz) too much") != std::string::npos);
  test.parts[0].weight = pounds(5, 8);
  problem = problem_of([&] { work_out(test); });
  CHECK(problem.id == "parts-unaccounted");
  CHECK(problem.found.find("226.8 g (8 oz) not accounted for") != std::string::npos);
}

TEST_CASE("one cutting loss may be what is left of the whole") {
  TrimTest test = trimmed_shoulder();
  test.parts[3] = TrimPart::cutting_loss_left_over();
  CHECK(work_out(test).lines[3].weight == pounds(1));
  test.parts[0].weight = pounds(8);
  CHECK(problem_of([&] { work_out(test); }).id == "parts-above-whole");
  test = trimmed_shoulder();
  test.parts[2] = TrimPart::cutting_loss_left_over();
  test.parts[3] = TrimPart::cutting_loss_left_over();
  CHECK(problem_of([&] { work_out(test); }).id == "part-weight-missing");
  test = trimmed_shoulder();
  test.parts[2].weight = std::nullopt;
  CHECK(problem_of([&] { work_out(test); }).found == "no weight for \"bone\"");
}

TEST_CASE("a sheet without sense is refused") {
  const auto id_with = [](auto change) {
    TrimTest test = trimmed_shoulder();
    change(test);
    return problem_of([&] { work_out(test); }).id;
  };
  CHECK(id_with([](TrimTest& test) { test.purchased = Mass{}; }) == "number-not-positive");
  CHECK(id_with([](TrimTest& test) { test.price = Money{}; }) == "number-not-positive");
  CHECK(id_with([](TrimTest& test) { test.portion = Mass{}; }) == "number-not-positive");
  CHECK(id_with([](TrimTest& test) { test.parts[1].weight = pounds(-2); }) ==
        "number-not-positive");
  CHECK(id_with([](TrimTest& test) { test.parts[2].value = per_pound("1"); }) ==
        "part-value-not-credited");
  CHECK(id_with([](TrimTest& test) { test.parts[0].kind = PartKind::waste; }) ==
        "usable-part-missing");
  CHECK(id_with([](TrimTest& test) { test.parts[1].value = per_pound("30"); }) ==
        "credits-above-cost");
}
