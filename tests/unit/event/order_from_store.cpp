// SPDX-License-Identifier: MIT
// What is there already, what cuts leave, what a supplier asks at least, and several events at
// once.

#include "platewright/event/event_cost.hpp"
#include "platewright/event/order_of_day.hpp"
#include "support/catch.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Order order_for(const TestKitchen& kitchen) {
  return order_of_day({supper()}, kitchen.book, kitchen.prices);
}

const OrderLine* find_line(const Order& order, const std::string& ingredient) {
  for (const SupplierOrder& supplier : order.suppliers) {
    for (const OrderLine& line : supplier.lines) {
      if (line.ingredient == ingredient) return &line;
    }
  }
  return nullptr;
}

}  // namespace

TEST_CASE("what is in store is taken off, and nothing is ordered where it is enough") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.entries["anchovy"].in_store = amount("3 oz");
  const Order order = order_for(kitchen);
  CHECK(find_line(order, "anchovy")->need.number == printed("7.295"));
  CHECK(find_line(order, "anchovy")->packs == 2);
  kitchen.prices.entries["anchovy"].in_store = amount("1 lb");
  const Order stocked = order_for(kitchen);
  CHECK(find_line(stocked, "anchovy") == nullptr);
  REQUIRE(stocked.all_there.size() == 1);
  CHECK(stocked.all_there[0].ingredient == "anchovy");
}

TEST_CASE("a by-product that is used is taken off the order and saved once") {
  TestKitchen kitchen = supper_kitchen();
  const Production plain = plan_production(supper(), kitchen.book, kitchen.prices);
  const Money before = event_cost(supper(), plain, kitchen.book, kitchen.prices).food;
  // 10 % of 30 lb of lamb instead of flour, which costs 0.80 a pound
  kitchen.prices.entries["lamb leg"].by_products = {
      {"a part", fraction(1, 10), Money(), amount("1 lb").unit, "flour"}};
  const Production production = plan_production(supper(), kitchen.book, kitchen.prices);
  const EventCost cost = event_cost(supper(), production, kitchen.book, kitchen.prices);
  CHECK(cost.saved == money("2.40"));
  CHECK(cost.food == before - money("2.40"));
  const Order order = order_for(kitchen);
  CHECK(find_line(order, "flour")->need.number == printed("12.4425") - 3);
  CHECK(order.used_value == cost.food);
}

TEST_CASE("a by-product with a worth is credited on the plate and leaves the order alone") {
  TestKitchen kitchen = supper_kitchen();
  const Production production = plan_production(supper(), kitchen.book, kitchen.prices);
  const Money before = event_cost(supper(), production, kitchen.book, kitchen.prices).food;
  kitchen.prices.entries["lamb leg"].by_products = {
      {"bones", fraction(1, 10), money("1.00"), amount("1 lb").unit, ""}};
  const EventCost cost = event_cost(supper(), production, kitchen.book, kitchen.prices);
  CHECK(cost.food == before - money("3.00"));
  CHECK(find_line(order_for(kitchen), "lamb leg")->packs == 4);
}

TEST_CASE("a supplier delivers no fewer packs than it says, and for no less than its minimum") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.entries["flour"].purchases[0].least = 3;
  kitchen.prices.entries["flour"].purchases[0].deposit = money("2.00");
  kitchen.prices.suppliers["the market"].minimum = money("500");
  kitchen.prices.suppliers["the butcher"].minimum = money("100");
  const Order order = order_for(kitchen);
  CHECK(find_line(order, "flour")->packs == 3);
  CHECK(find_line(order, "flour")->deposit == money("6.00"));
  CHECK(order.deposit == money("6.00"));
  CHECK(order.suppliers[0].below_minimum == Money());
  // The market comes on two days, and for less than 500 on none of them.
  CHECK(order.suppliers[2].below_minimum == money("1000") - order.suppliers[2].total);
}

TEST_CASE("goods for two events are there for the one that uses them first") {
  const TestKitchen kitchen = supper_kitchen();
  Event lunch = supper();
  lunch.at = read_local_time("2027-10-08 13:00");
  lunch.menu = {{"flat bread", 1, {}}};
  const Order both = order_of_day({supper(), lunch}, kitchen.book, kitchen.prices);
  CHECK(find_line(both, "flour")->deliver_by == read_local_time("2027-10-07 00:00"));
  CHECK(find_line(both, "lamb leg")->deliver_by == read_local_time("2027-10-07 00:00"));
}

TEST_CASE("one order for two events shares open packs") {
  const TestKitchen kitchen = supper_kitchen();
  const Order one = order_for(kitchen);
  const Order both = order_of_day({supper(), supper()}, kitchen.book, kitchen.prices);
  CHECK(find_line(both, "flour")->need.number == find_line(one, "flour")->need.number * 2);
  CHECK(find_line(both, "flour")->packs == 1);
  CHECK(find_line(both, "lamb leg")->packs == 8);
  CHECK(both.total < one.total * Rational(2));
  CHECK(both.used_value == one.used_value * Rational(2));
}
