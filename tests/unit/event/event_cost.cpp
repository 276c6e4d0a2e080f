// SPDX-License-Identifier: MIT
#include "platewright/event/event_cost.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

EventCost cost_of(const Event& event, const TestKitchen& kitchen) {
  return event_cost(event, plan_production(event, kitchen.book, kitchen.prices), kitchen.book,
                    kitchen.prices);
}

}  // namespace

TEST_CASE("an event's food costs what its dishes cost") {
  const EventCost cost = cost_of(supper(), supper_kitchen());
  REQUIRE(cost.dishes.size() == 2);
  // four batches of 74.106; 4.1475 of bread at 2.40 flour + 0.32 garlic + 2.00 paste
  CHECK(cost.dishes[0].total == money("296.424"));
  CHECK(cost.dishes[1].total == money("19.5762"));
  CHECK(cost.food == money("316.0002"));
}

TEST_CASE("what the order of an event is charged for deliveries is in its cost") {
  TestKitchen kitchen = supper_kitchen();
  CHECK(cost_of(supper(), kitchen).deliveries.empty());
  // The market comes on two days for this supper, the butcher on one.
  kitchen.prices.suppliers["the market"].delivery_charge = money("5");
  kitchen.prices.suppliers["the butcher"].delivery_charge = money("12.50");
  const EventCost cost = cost_of(supper(), kitchen);
  REQUIRE(cost.deliveries.size() == 2);
  CHECK(cost.deliveries[0].supplier == "the butcher");
  CHECK(cost.deliveries[0].cost() == money("12.50"));
  CHECK(cost.deliveries[1].deliveries == 2);
  CHECK(cost_of_deliveries(cost.deliveries) == money("22.50"));
  CHECK(cost.food == cost_of(supper(), supper_kitchen()).food);
  // Whoever knows no time has each of them come once.
  Event untimed = supper();
  untimed.at.reset();
  CHECK(cost_of_deliveries(cost_of(untimed, kitchen).deliveries) == money("17.50"));
}

TEST_CASE("overhead and contingency are on deliveries, too, and the rule asks for them") {
  QuoteTerms terms;
  terms.rule = PricingRule::margin;
  terms.rule_share = fraction(1, 2);
  terms.overhead = fraction(1, 10);
  terms.contingency = fraction(1, 5);
  terms.q_factor = fraction(1, 4);
  const std::vector<DeliveryCost> deliveries = {{"the mill", 2, money("10")},
                                                {"the quay", 1, money("5")}};
  const Quote quote =
      make_quote(money("100"), {{"adults", 10, 1}}, terms, Currency("USD"), deliveries);
  CHECK(quote.deliveries_total == money("25"));
  // (100 x 1.25 + 25) x 1.1 x 1.2
  CHECK(quote.cost == money("198"));
  CHECK(quote.target == money("396"));
  CHECK(cost_of_food(quote).food_for(quote.cost) == money("100"));
}

TEST_CASE("an event is quoted by its own terms and guests") {
  const TestKitchen kitchen = supper_kitchen();
  Event event = supper();
  event.terms.rule = PricingRule::food_cost;
  event.terms.rule_share = fraction(1, 4);
  event.terms.extras = {{"plates", money("1.00"), true}};
  const EventCost cost = cost_of(event, kitchen);
  const Quote quote = quote_for(event, cost, kitchen.prices);
  CHECK(quote.guests == 84);
  CHECK(quote.full_prices == 75);
  CHECK(quote.extras_total == money("84"));
  CHECK(quote.target == money("1264.0008"));
  CHECK(quote.price == money("16.86"));
  REQUIRE(quote.lines.size() == 3);
  CHECK(quote.lines[1].price == money("8.43"));
  CHECK(quote.lines[2].amount == Money{});
  CHECK(quote.subtotal == money("1264.50"));
}

TEST_CASE("terms that lead to no price are reported at the event") {
  Event event = supper();
  event.place.line = 3;
  event.terms.rule_share = 1;
  const Problem problem = problem_of([&] { quote_for(event, {{}, money("100")}, PriceList{}); });
  CHECK(problem.id == "share-out-of-range");
  CHECK(problem.place.line == 3);
}
