// SPDX-License-Identifier: MIT
#include "platewright/event/deliveries.hpp"

#include "platewright/event/order_warnings.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

LocalTime day(const char* text) {
  return LocalTime(read_local_day(text));
}

/// 2027-10-05 is a Tuesday.
Supplier tuesdays_and_fridays() {
  Supplier out;
  out.delivers = {std::chrono::Tuesday, std::chrono::Friday};
  out.cut_off = CutOff{2, std::chrono::hours(14)};
  return out;
}

TestKitchen kitchen_with(const Supplier& butcher) {
  TestKitchen out = supper_kitchen();
  out.prices.suppliers["the butcher"] = butcher;
  return out;
}

Order order_from(const TestKitchen& kitchen) {
  return make_order(supper(), plan_production(supper(), kitchen.book, kitchen.prices), kitchen.book,
                    kitchen.prices);
}

std::vector<std::string> ids_of(const ProblemList& problems) {
  std::vector<std::string> out;
  for (const Problem& problem : problems.all()) out.push_back(problem.id);
  return out;
}

}  // namespace

TEST_CASE("goods come on the last delivery day that is not too late") {
  const Supplier supplier = tuesdays_and_fridays();
  CHECK(last_delivery(supplier, day("2027-10-08")) == day("2027-10-08"));
  CHECK(last_delivery(supplier, day("2027-10-07")) == day("2027-10-05"));
  CHECK(last_delivery(Supplier(), day("2027-10-07")) == day("2027-10-07"));
}

TEST_CASE("no one delivers on a closed day, and no one takes an order") {
  Supplier supplier = tuesdays_and_fridays();
  supplier.closed = {{read_local_day("2027-10-08"), read_local_day("2027-10-08")},
                     {read_local_day("2027-10-02"), read_local_day("2027-10-03")}};
  CHECK(last_delivery(supplier, day("2027-10-09")) == day("2027-10-05"));
  CHECK(last_delivery(supplier, day("2027-10-09"), true) == day("2027-10-08"));
  // Two days before the Tuesday is the Sunday, and the Saturday is closed, too.
  CHECK(last_order(supplier, pack("1 lb", "1"), day("2027-10-05")) == day("2027-10-01"));
  supplier.closed = {{read_local_day("2027-01-01"), read_local_day("2027-12-31")}};
  CHECK(!last_delivery(supplier, day("2027-10-09")));
}

TEST_CASE("of the offer's days and the supplier's the more count") {
  const Supplier supplier = tuesdays_and_fridays();
  Purchase offer = pack("1 lb", "1");
  CHECK(days_to_order(supplier, offer) == 2);
  offer.days = 5;
  CHECK(days_to_order(supplier, offer) == 5);
  CHECK(days_to_order(Supplier(), offer) == 5);
  CHECK(!days_to_order(Supplier(), pack("1 lb", "1")));
}

TEST_CASE("an order is in time up to the supplier's hour, or all day") {
  Supplier supplier = tuesdays_and_fridays();
  CHECK(is_in_time(day("2027-10-05"), supplier, read_local_time("2027-10-05 14:00")));
  CHECK(!is_in_time(day("2027-10-05"), supplier, read_local_time("2027-10-05 14:01")));
  supplier.cut_off->hour.reset();
  CHECK(is_in_time(day("2027-10-05"), supplier, read_local_time("2027-10-05 23:59")));
  CHECK(!is_in_time(day("2027-10-05"), supplier, read_local_time("2027-10-06 00:00")));
}

TEST_CASE("the next delivery is the first whose hour of ordering is not over") {
  const Supplier supplier = tuesdays_and_fridays();
  const Purchase offer = pack("1 lb", "1");
  // Two days before the Friday is the Wednesday.
  CHECK(first_delivery(supplier, offer, read_local_time("2027-10-06 14:00")) == day("2027-10-08"));
  CHECK(first_delivery(supplier, offer, read_local_time("2027-10-06 14:01")) == day("2027-10-12"));
  CHECK(!first_delivery(Supplier(), offer, read_local_time("2027-10-06 14:01")));
}

TEST_CASE("a supplier's days move an order and its delivery, and each delivery is charged") {
  Supplier butcher = tuesdays_and_fridays();
  butcher.delivery_charge = money("12.50");
  const Order order = order_from(kitchen_with(butcher));
  const SupplierOrder& meat = order.suppliers[0];
  // Needed on Thursday the 7th; the butcher's offer takes three days.
  CHECK(meat.deliver_by == day("2027-10-07"));
  CHECK(meat.lines[0].deliver_on == day("2027-10-05"));
  CHECK(meat.lines[0].days_early() == 2);
  CHECK(meat.order_by == day("2027-10-02"));
  CHECK(meat.delivery_charges == money("12.50"));
  CHECK(order.delivery_charges == money("12.50"));
  CHECK(order.to_pay() == order.total + money("12.50"));
}

TEST_CASE("one delivery brings everything on the earliest of its days") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.suppliers["the market"].delivery_charge = money("5");
  const Order apart = order_from(kitchen);
  REQUIRE(apart.suppliers[2].deliveries.size() == 2);
  CHECK(apart.suppliers[2].delivery_charges == money("10"));
  kitchen.prices = with_one_delivery(kitchen.prices);
  const Order together = order_from(kitchen);
  CHECK(together.suppliers[2].deliveries.size() == 1);
  CHECK(together.suppliers[2].delivery_charges == money("5"));
  for (const OrderLine& line : together.suppliers[2].lines) {
    CHECK(line.deliver_on == day("2027-10-07"));
  }
}

TEST_CASE("what can't be had as planned is named, with what would do") {
  Supplier butcher = tuesdays_and_fridays();
  TestKitchen kitchen = kitchen_with(butcher);
  CHECK(ids_of(order_warnings(order_from(kitchen), kitchen.prices, {})).empty());
  kitchen.prices.entries["lamb leg"].keeping.days = 1;
  CHECK(ids_of(order_warnings(order_from(kitchen), kitchen.prices, {})) ==
        std::vector<std::string>{"delivery-too-early"});
  Purchase other = kitchen.prices.entries["lamb leg"].purchases.front();
  other.supplier = "the farm";
  kitchen.prices.entries["lamb leg"].purchases.push_back(other);
  const ProblemList warnings = order_warnings(order_from(kitchen), kitchen.prices, {});
  CHECK(warnings.all().front().remedy ==
        "order \"lamb leg\" from \"the farm\"; or ask for a delivery on Wed 2027-10-06 or later");
}

TEST_CASE("a minimum that is not met names the least that fills it up, and what could be moved") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.suppliers["the butcher"].minimum = money("300");
  Purchase oil = kitchen.prices.entries["olive oil"].purchases.front();
  oil.supplier = "the butcher";
  kitchen.prices.entries["olive oil"].purchases.push_back(oil);
  const ProblemList warnings = order_warnings(order_from(kitchen), kitchen.prices, {});
  REQUIRE(warnings.all().size() == 1);
  // Four legs at 67.50 are 270.00.
  CHECK(warnings.all().front().found ==
        "an order of 270.00 USD from \"the butcher\", which lacks 30.00 USD");
  CHECK(warnings.all().front().remedy ==
        "order 30.00 USD more of what keeps, 1 more of \"lamb leg\" (67.50 USD) being the least; "
        "or buy there, too: \"olive oil\"; or ask whether "
        "it takes a smaller order");
}

TEST_CASE("a minimum is held for each delivery, and one delivery of all would do") {
  TestKitchen kitchen = supper_kitchen();
  const Order before = order_from(kitchen);
  const SupplierOrder& market = before.suppliers[2];
  REQUIRE(market.deliveries.size() == 2);
  const Delivery& first = market.deliveries[0];
  const Delivery& second = market.deliveries[1];
  CHECK(first.on == day("2027-10-07"));
  CHECK(first.goods + second.goods == market.total);
  // All of it would be enough.
  kitchen.prices.suppliers["the market"].minimum = market.total;
  const Order order = order_from(kitchen);
  CHECK(order.suppliers[2].below_minimum == market.total);
  CHECK(order.suppliers[2].deliveries[0].below_minimum == second.goods);
  const ProblemList warnings = order_warnings(order, kitchen.prices, {});
  REQUIRE(ids_of(warnings) ==
          std::vector<std::string>{"order-below-minimum", "order-below-minimum"});
  CHECK(warnings.all()[0].found.substr(0, 31) == "a delivery on Thu 2027-10-07 of");
  CHECK(warnings.all()[0].remedy.substr(0, 45) == "have all of it on one day (`one delivery: yes");
  kitchen.prices = with_one_delivery(kitchen.prices);
  CHECK(ids_of(order_warnings(order_from(kitchen), kitchen.prices, {})).empty());
}

TEST_CASE("what is ordered too late is said where the hour of ordering is known") {
  const TestKitchen kitchen = kitchen_with(tuesdays_and_fridays());
  const Order order = order_from(kitchen);
  const auto ids = [&](const char* ordered) {
    return ids_of(order_warnings(order, kitchen.prices, {}, read_local_time(ordered)));
  };
  CHECK(ids("2027-10-02 14:00").empty());
  CHECK(ids("2027-10-02 14:01") == std::vector<std::string>{"order-too-late"});
}

TEST_CASE("closed days and a minimum are named by what they do to an order") {
  Supplier butcher = tuesdays_and_fridays();
  butcher.closed = {{read_local_day("2027-10-05"), read_local_day("2027-10-05")}};
  butcher.minimum = money("300");
  TestKitchen kitchen = kitchen_with(butcher);
  CHECK(ids_of(order_warnings(order_from(kitchen), kitchen.prices, {})) ==
        std::vector<std::string>{"delivery-day-closed", "order-below-minimum"});
  kitchen.prices.suppliers["the butcher"].closed = {
      {read_local_day("2027-01-01"), read_local_day("2027-12-31")}};
  CHECK(ids_of(order_warnings(order_from(kitchen), kitchen.prices, {})) ==
        std::vector<std::string>{"no-delivery-in-time", "order-below-minimum"});
}
