// SPDX-License-Identifier: MIT
#include "platewright/worksheet/working.hpp"

#include "platewright/worksheet/cooking_loss_working.hpp"
#include "platewright/worksheet/trim_working.hpp"
#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

TrimTestResult loin() {
  return work_out(TrimTest{
      "lamb loin",
      pounds(12),
      per_pound("6.65"),
      std::nullopt,
      {TrimPart::usable("loin", pounds(6)), TrimPart::by_product("fat", pounds(3), PricePerMass{}),
       TrimPart::by_product("kidneys", pounds(1), per_pound("6.10")),
       TrimPart::by_product("flank", pounds(1, 8), per_pound("4.60")),
       TrimPart::cutting_loss(pounds(0, 8))},
      ounces(5)});
}

Figure value_of(const Working& working, const std::string& name) {
  const WorkingStep* step = find_step(working, name);
  REQUIRE(step != nullptr);
  return step->value;
}

}  // namespace

TEST_CASE("every step of a trim test is what its terms come to, and what the result says") {
  const TrimTestResult result = loin();
  const Working working = working_of(result, WeighedIn::pounds, per_pound("7.00"));
  for (const WorkingStep& step : working) {
    INFO(step.name);
    CHECK(worked(step.operation, step.terms) == step.value);
    for (const KnownSlip& slip : step.slips) CHECK(slip.value != step.value);
  }
  CHECK(value_of(working, "invoice") == Figure(result.invoice));
  CHECK(value_of(working, "credits") == Figure(result.credits));
  CHECK(value_of(working, "net cost") == Figure(result.net_cost));
  CHECK(value_of(working, "trim") == Figure(result.trim));
  CHECK(value_of(working, "usable") == Figure(result.usable));
  CHECK(value_of(working, "share of flank") == Figure(fraction(1, 8)));
  CHECK(value_of(working, "yield") == Figure(result.yield));
  CHECK(value_of(working, "cost per lb") == Figure(result.cost_per_weight));
  CHECK(value_of(working, "cost per oz") == Figure(result.cost_per_weight * ounces(1)));
  CHECK(value_of(working, "cost factor") == Figure(result.cost_factor));
  CHECK(value_of(working, "portion cost") == Figure(result.portion->cost));
  CHECK(value_of(working, "portion cost factor") == Figure(result.portion->factor));
  CHECK(value_of(working, "cost per lb at the new price") ==
        Figure(result.cost_per_weight_at(per_pound("7.00"))));
  CHECK(value_of(working, "portion cost at the new price") ==
        Figure(result.portion->at(per_pound("7.00"))));
  CHECK(find_step(working, "labour") == nullptr);
  CHECK(value_of(working, "value of fat") == Figure(Money{}));
}

TEST_CASE("labour has lines of its own, and a price for the whole is divided") {
  TrimTest test{"round",
                pounds(20),
                money("50"),
                per_pound("1.00"),
                {TrimPart::usable_left_over("round"), TrimPart::waste("fat", pounds(8))},
                std::nullopt};
  const Working working = working_of(work_out(test), WeighedIn::pounds);
  CHECK(find_step(working, "invoice") == nullptr);
  CHECK(value_of(working, "purchase price") == Figure(per_pound("2.50")));
  CHECK(value_of(working, "labour") == Figure(money("20")));
  CHECK(value_of(working, "total cost") == Figure(money("70")));
  CHECK(value_of(working, "net cost") == Figure(money("70")));
  CHECK(value_of(working, "usable") == Figure(pounds(12)));
  CHECK(find_step(working, "portion cost") == nullptr);
}

TEST_CASE("every step of a cooking loss test is what its terms come to") {
  const TrimTestResult trimmed = loin();
  const CookingLossResult result = work_out(CookingLossTest{
      "lamb loin", trimmed.usable, TrimmedCost::from(trimmed, CostBase::net_of_credits),
      trimmed.purchase_price, pounds(5, 8), pounds(1), std::nullopt, ounces(5)});
  const Working working = working_of(result, WeighedIn::kilograms, std::nullopt, &trimmed);
  for (const WorkingStep& step : working) {
    INFO(step.name);
    CHECK(worked(step.operation, step.terms) == step.value);
  }
  CHECK(value_of(working, "cooking loss") == Figure(result.cooking_loss));
  CHECK(value_of(working, "saleable") == Figure(pounds(4, 8)));
  CHECK(value_of(working, "shrink") == Figure(result.shrink));
  CHECK(value_of(working, "yield") == Figure(result.saleable_share));
  CHECK(value_of(working, "cost per kg") == Figure(result.cost_per_weight));
  CHECK(value_of(working, "cost per 100 g") == Figure(result.cost_per_weight * grams(100)));
  CHECK(value_of(working, "portion cost") == Figure(result.portion->cost));
}
