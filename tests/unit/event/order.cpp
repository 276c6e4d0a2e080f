// SPDX-License-Identifier: MIT
#include "platewright/event/order.hpp"

#include <stdexcept>

#include "platewright/event/event_cost.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Order order_for(const Event& event, const TestKitchen& kitchen) {
  return make_order(event, plan_production(event, kitchen.book, kitchen.prices), kitchen.book,
                    kitchen.prices);
}

const OrderLine& line_for(const Order& order, const std::string& ingredient) {
  for (const SupplierOrder& supplier : order.suppliers) {
    for (const OrderLine& line : supplier.lines) {
      if (line.ingredient == ingredient) return line;
    }
  }
  throw std::runtime_error("not ordered: " + ingredient);
}

}  // namespace

TEST_CASE("an order goes by supplier and ingredient") {
  const Order order = order_for(supper(), supper_kitchen());
  REQUIRE(order.suppliers.size() == 3);
  CHECK(order.suppliers[0].supplier == "the butcher");
  CHECK(order.suppliers[1].supplier == "the fishmonger");
  CHECK(order.suppliers[2].supplier == "the market");
  REQUIRE(order.suppliers[2].lines.size() == 4);
  CHECK(order.suppliers[2].lines[0].ingredient == "flour");
  CHECK(order.suppliers[2].lines[3].ingredient == "parsley");
}

TEST_CASE("goods by the piece are ordered as whole pieces") {
  const OrderLine lamb = line_for(order_for(supper(), supper_kitchen()), "lamb leg");
  CHECK(lamb.packs == 4);
  CHECK(lamb.ordered == amount("30 lb"));
  CHECK(lamb.need == amount("30 lb"));
  CHECK(lamb.left_over.number == 0);
  CHECK(lamb.cost == money("270.00"));
}

TEST_CASE("packs are rounded up and what is left over has a value") {
  const Order order = order_for(supper(), supper_kitchen());
  // 2.57375 batches of paste at 4 oz, in packs of 4 oz
  const OrderLine& anchovy = line_for(order, "anchovy");
  CHECK(anchovy.need.number == printed("10.295"));
  CHECK(anchovy.packs == 3);
  CHECK(anchovy.cost == money("9.00"));
  CHECK(anchovy.left_over.number == printed("1.705"));
  CHECK(anchovy.left_over_value == money("1.27875"));
  // 8 oz of leaves from 16 oz, in bunches of 2 oz
  CHECK(line_for(order, "parsley").packs == 8);
  CHECK(line_for(order, "flour").used_by == std::vector<std::string>{"flat bread"});
}

TEST_CASE("an ingredient of several recipes is ordered once") {
  const Order order = order_for(supper(), supper_kitchen());
  // 2 tbsp x 4, 2 cups x 2 and 1/2 cup x 2.57375
  const OrderLine& oil = line_for(order, "olive oil");
  CHECK(oil.need.number == printed("5.786875") / 16);
  CHECK(oil.packs == 1);
  CHECK(oil.used_by == std::vector<std::string>{"roast lamb", "anchovy paste", "green sauce"});
}

TEST_CASE("an order's totals are the sums of its lines") {
  const Order order = order_for(supper(), supper_kitchen());
  Money total;
  Money left_over;
  for (const SupplierOrder& supplier : order.suppliers) {
    Money of_supplier;
    for (const OrderLine& line : supplier.lines) {
      of_supplier += line.cost;
      left_over += line.left_over_value;
    }
    CHECK(of_supplier == supplier.total);
    total += of_supplier;
  }
  CHECK(total == order.total);
  CHECK(left_over == order.left_over_value);
  CHECK(order.used_value + order.left_over_value == order.total);
  // Here no sub-recipe is made of whole pieces, so that all that is used is on the plates.
  const TestKitchen kitchen = supper_kitchen();
  const Production production = plan_production(supper(), kitchen.book, kitchen.prices);
  CHECK(order.used_value == event_cost(supper(), production, kitchen.book, kitchen.prices).food);
}

TEST_CASE("goods are there on the day of their first use, or the day before if it begins early") {
  CHECK(delivery_day(read_local_time("2027-10-09 12:00")) == read_local_time("2027-10-09 00:00"));
  CHECK(delivery_day(read_local_time("2027-10-09 11:59")) == read_local_time("2027-10-08 00:00"));
}

TEST_CASE("the last day to order counts back from the day of the first use") {
  Event event = supper();
  const Order order = order_for(event, supper_kitchen());
  // Served at 18:30; 20 min, 25 min and at most 48 h before that, the lamb is rubbed: Thu 17:45.
  CHECK(order.suppliers[0].deliver_by == read_local_time("2027-10-07 00:00"));
  REQUIRE(order.suppliers[0].order_by.has_value());
  CHECK(*order.suppliers[0].order_by == read_local_time("2027-10-04 00:00"));
  CHECK(order.suppliers[0].lines[0].order_by == order.suppliers[0].order_by);
  CHECK(!order.suppliers[1].order_by);
  // No step of the bread has a time: it may be begun in the morning.
  CHECK(line_for(order, "flour").deliver_by == read_local_time("2027-10-08 00:00"));
  event.at.reset();
  CHECK(!order_for(event, supper_kitchen()).suppliers[0].order_by);
}

TEST_CASE("the earliest day of a supplier's lines is the supplier's") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.entries["flour"].purchases[0].days = 2;
  kitchen.prices.entries["garlic"].purchases[0].days = 5;
  kitchen.prices.entries["parsley"].purchases[0].days = 1;
  const Order order = order_for(supper(), kitchen);
  // The garlic goes on the lamb on Thursday, though the bread that it is in as well is of Saturday.
  CHECK(order.suppliers[2].order_by == read_local_time("2027-10-02 00:00"));
  CHECK(line_for(order, "flour").order_by == read_local_time("2027-10-06 00:00"));
  // The sauce stands for 2 h, and is ready before the lamb is begun: Thursday as well.
  CHECK(line_for(order, "parsley").order_by == read_local_time("2027-10-06 00:00"));
}

TEST_CASE("free goods, goods without an offer and goods to taste are listed apart") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.entries.erase("flour");
  const Order order = order_for(supper(), kitchen);
  REQUIRE(order.not_ordered.size() == 2);
  CHECK(order.not_ordered[0].ingredient == "flour");
  CHECK(!order.not_ordered[0].free);
  REQUIRE(order.not_ordered[0].used.size() == 1);
  CHECK(order.not_ordered[0].used[0].number == printed("12.4425"));
  CHECK(order.not_ordered[1].ingredient == "water");
  CHECK(order.not_ordered[1].free);
  REQUIRE(order.have_ready.size() == 1);
  CHECK(order.have_ready[0].ingredient == "salt");
  CHECK(order.have_ready[0].used_by == std::vector<std::string>{"roast lamb", "green sauce"});
}

TEST_CASE("an order line refuses a need in another measure") {
  Need need;
  need.ingredient = "flour";
  CHECK(problem_of([&] { order_line(need, amount("1 cup"), pack("1 lb", "1")); }).id ==
        "units-do-not-mix");
}
