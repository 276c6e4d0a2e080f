#include "platewright/event/event_cost.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

EventCost cost_of(const Event& event, const TestKitchen& kitchen) {
  return event_cost(plan_production(event, kitchen.book, kitchen.prices), kitchen.book,
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
