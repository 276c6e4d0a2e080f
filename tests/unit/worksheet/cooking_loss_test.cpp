// SPDX-License-Identifier: MIT
#include "platewright/worksheet/cooking_loss_test.hpp"

#include <type_traits>

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// 10 lb oven-ready for 60.00, bought at 5.00: 8 lb cooked, 2 lb of bones, 6 lb saleable.
CookingLossTest rib(const TrimmedCost& cost = TrimmedCost::from_invoice(money("60.00"))) {
  return {"rib of beef", pounds(10), cost,         per_pound("5.00"),
          pounds(8),     pounds(2),  std::nullopt, ounces(8)};
}

}  // namespace

// Which base the cost has is the user's choice: without one the sheet can't be made.
static_assert(!std::is_default_constructible_v<TrimmedCost>);
static_assert(!std::is_default_constructible_v<CookingLossTest>);

TEST_CASE("a cooking loss test shows every step") {
  const CookingLossResult result = work_out(rib());
  CHECK(result.base == CostBase::invoice);
  CHECK(result.cooking_loss == pounds(2));
  CHECK(result.shrink == fraction(1, 5));
  CHECK(result.cooked_share == fraction(4, 5));
  CHECK(result.bones_and_trim_share == fraction(1, 5));
  CHECK(result.saleable == pounds(6));
  CHECK(result.saleable_share == fraction(3, 5));
  CHECK(for_a_pound(result.cost_per_weight) == 10);
  CHECK(result.cost_factor == 2);
  REQUIRE(result.portion.has_value());
  CHECK(result.portion->cost == money("5.00"));
  CHECK(result.portion->factor == pounds(1));
  CHECK(for_a_pound(result.cost_per_weight_at(per_pound("6.00"))) == 12);
}

TEST_CASE("the cost comes from a trim test, labour included, by the base that is named") {
  const TrimTestResult trimmed =
      work_out(TrimTest{"rib of beef",
                        pounds(12),
                        per_pound("4.50"),
                        per_pound("0.50"),
                        {TrimPart::usable("rib", pounds(10)),
                         TrimPart::by_product("short ribs", pounds(2), per_pound("3.00"))},
                        std::nullopt});
  const auto invoice = work_out(rib(TrimmedCost::from(trimmed, CostBase::invoice)));
  const auto net = work_out(rib(TrimmedCost::from(trimmed, CostBase::net_of_credits)));
  CHECK(for_a_pound(invoice.cost_per_weight) == 10);
  CHECK(for_a_pound(net.cost_per_weight) == 9);
  CHECK(net.base == CostBase::net_of_credits);
}

TEST_CASE("bones, trim and saleable weight add up to the cooked weight") {
  CookingLossTest test = rib();
  test.saleable = pounds(6);
  CHECK(problem_of([&] { work_out(test); }).id.empty());
  test.saleable = pounds(6, 4);
  CHECK(problem_of([&] { work_out(test); }).id == "parts-above-whole");
  test.saleable = pounds(5, 12);
  const Problem problem = problem_of([&] { work_out(test); });
  CHECK(problem.id == "parts-unaccounted");
  CHECK(problem.found.find("(4 oz) not accounted for") != std::string::npos);
}

TEST_CASE("a cooking loss sheet without sense is refused") {
  const auto id_with = [](auto change) {
    CookingLossTest test = rib();
    change(test);
    return problem_of([&] { work_out(test); }).id;
  };
  CHECK(id_with([](auto& test) { test.trimmed = Mass{}; }) == "number-not-positive");
  CHECK(id_with([](auto& test) { test.cost = TrimmedCost::from_invoice({}); }) ==
        "number-not-positive");
  CHECK(id_with([](auto& test) { test.purchase_price = {}; }) == "number-not-positive");
  CHECK(id_with([](auto& test) { test.cooked = pounds(11); }) == "parts-above-whole");
  CHECK(id_with([](auto& test) { test.bones_and_trim = pounds(9); }) == "parts-above-whole");
  CHECK(id_with([](auto& test) { test.bones_and_trim = pounds(-1); }) == "number-not-positive");
  CHECK(id_with([](auto& test) { test.bones_and_trim = pounds(8); }) == "number-not-positive");
  CHECK(id_with([](auto& test) { test.portion = Mass{}; }) == "number-not-positive");
}
