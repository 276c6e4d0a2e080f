// SPDX-License-Identifier: MIT
// A cooking loss test against a published card whose own parts do not add up.

#include "platewright/worksheet/cooking_loss_test.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

CookingLossTest loin(const TrimmedCost& cost, const std::optional<Mass>& saleable) {
  return {"lamb loin",  pounds(6), cost,     per_pound("6.65"),
          pounds(5, 8), pounds(1), saleable, std::nullopt};
}

}  // namespace

// A class card prints 5 lb saleable of 5 lb 8 oz cooked with 1 lb of bones and trim, and 15.96 a
// pound.
TEST_CASE("the card's saleable weight is reported, as it is 8 oz too much") {
  const Problem problem =
      problem_of([] { work_out(loin(TrimmedCost::from_invoice(money("79.80")), pounds(5))); });
  CHECK(problem.id == "parts-above-whole");
  CHECK(problem.found.find("226.8 g (8 oz) too much") != std::string::npos);
}

// With the 4 lb 8 oz that are left it is 17.73 a pound from the invoice of 79.80, and 14.84 from
// the 66.80 that the loin costs net of its by-products.
TEST_CASE("the card's loin from either base of cost") {
  const CookingLossResult invoice =
      work_out(loin(TrimmedCost::from_invoice(money("79.80")), std::nullopt));
  CHECK(invoice.saleable == pounds(4, 8));
  CHECK(invoice.shrink == fraction(1, 12));
  CHECK(for_a_pound(invoice.cost_per_weight) == fraction(266, 15));
  CHECK(as_decimal(for_a_pound(invoice.cost_per_weight), 2) == "17.73");
  CHECK(invoice.cost_factor == fraction(8, 3));
  const CookingLossResult net =
      work_out(loin(TrimmedCost::net_of_credits(money("66.80")), std::nullopt));
  CHECK(as_decimal(for_a_pound(net.cost_per_weight), 2) == "14.84");
}
