// SPDX-License-Identifier: MIT
// Laws of the trim test and the cooking loss test that hold for any sheet.

#include <rapidcheck.h>

#include "platewright/quantity/units.hpp"
#include "platewright/worksheet/cooking_loss_test.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

Mass any_weight() {
  return Mass::of(*rc::gen::inRange(1, 20'000), units::gram);
}

PricePerMass any_price(int most) {
  return Money::of(fraction(*rc::gen::inRange(0, most), 100), units::currency_unit) /
         Mass::of(1, units::kilogram);
}

/// By-products are cheaper than the cut, so that the credits stay below the cost.
TrimTest any_trim_test() {
  TrimTest test;
  test.cut = "any";
  test.price =
      Money::of(1, units::currency_unit) / Mass::of(1, units::kilogram) + any_price(10'000);
  if (*rc::gen::arbitrary<bool>()) test.labour = any_price(1000);
  test.parts.push_back(TrimPart::usable("usable", any_weight()));
  for (int i = *rc::gen::inRange(0, 5); i > 0; --i) {
    test.parts.push_back(TrimPart::by_product("by-product", any_weight(), any_price(100)));
  }
  for (int i = *rc::gen::inRange(0, 3); i > 0; --i) {
    test.parts.push_back(TrimPart::waste("waste", any_weight()));
  }
  for (const TrimPart& part : test.parts) test.purchased += *part.weight;
  test.portion = any_weight();
  return test;
}

}  // namespace

TEST_CASE("shares of a trim test add up to the whole and values to the cost") {
  REQUIRE(rc::check([] {
    const TrimTestResult result = work_out(any_trim_test());
    Rational shares;
    Money values;
    for (const TrimLine& line : result.lines) {
      shares += line.share;
      values += line.value;
    }
    RC_ASSERT(shares == 1);
    RC_ASSERT(values == result.total_cost);
    RC_ASSERT(result.credits + result.net_cost == result.total_cost);
    RC_ASSERT(result.invoice + result.labour == result.total_cost);
    RC_ASSERT(result.cost_per_weight * result.usable == result.net_cost);
    RC_ASSERT(result.usable + result.trim == result.purchased);
  }));
}

TEST_CASE("the factors give the sheet's own cost back at its own price") {
  REQUIRE(rc::check([] {
    const TrimTestResult result = work_out(any_trim_test());
    RC_ASSERT(result.cost_per_weight_at(result.purchase_price) == result.cost_per_weight);
    RC_ASSERT(result.portion->at(result.purchase_price) == result.portion->cost);
  }));
}

TEST_CASE("without credits and labour the cost factor is one over the yield") {
  REQUIRE(rc::check([] {
    TrimTest test = any_trim_test();
    test.labour = std::nullopt;
    for (TrimPart& part : test.parts) part.value = PricePerMass{};
    const TrimTestResult result = work_out(test);
    RC_ASSERT(result.cost_factor * result.yield == 1);
  }));
}

TEST_CASE("shares of a cooking loss test add up to the oven-ready weight") {
  REQUIRE(rc::check([] {
    const Mass saleable = any_weight();
    const Mass bones = any_weight();
    const Mass loss = any_weight();
    const Money cost = Money::of(*rc::gen::inRange(1, 1000), units::currency_unit);
    const CookingLossResult result = work_out(CookingLossTest{
        "any", saleable + bones + loss, TrimmedCost::from_invoice(cost),
        cost / (saleable + bones + loss), saleable + bones, bones, std::nullopt, std::nullopt});
    RC_ASSERT(result.shrink + result.bones_and_trim_share + result.saleable_share == 1);
    RC_ASSERT(result.saleable == saleable);
    RC_ASSERT(result.cost_per_weight * saleable == cost);
    // Bought oven-ready, the cost factor is one over the yield.
    RC_ASSERT(result.cost_factor * result.saleable_share == 1);
  }));
}
