// SPDX-License-Identifier: MIT
#include "platewright/event/cheaper_offers.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Every one of the market's goods is offered by the farm, too, each at a little less.
TestKitchen kitchen_with_a_farm(const char* off) {
  TestKitchen out = supper_kitchen();
  for (auto& [name, entry] : out.prices.entries) {
    if (entry.purchases.empty() || entry.purchases.front().supplier != "the market") continue;
    Purchase offer = entry.purchases.front();
    offer.supplier = "the farm";
    offer.price = offer.price - money(off);
    entry.purchases.push_back(offer);
  }
  return out;
}

Occasion occasion_of(const TestKitchen& kitchen) {
  return {supper(), kitchen.book, kitchen.prices};
}

std::size_t lines_from(const Order& order, const std::string& supplier) {
  for (const SupplierOrder& one : order.suppliers) {
    if (one.supplier == supplier) return one.lines.size();
  }
  return 0;
}

}  // namespace

TEST_CASE("what an order costs holds minimums and deliveries") {
  TestKitchen kitchen = supper_kitchen();
  const Money goods = order_of_day({occasion_of(kitchen)}).total;
  kitchen.prices.suppliers["the butcher"].minimum = money("300");
  kitchen.prices.suppliers["the butcher"].delivery_charge = money("7");
  // The lamb comes to 270.00.
  CHECK(cost_of_order(order_of_day({occasion_of(kitchen)})) == goods + money("37"));
}

TEST_CASE("a cheaper supplier is passed over whose delivery costs more than it saves") {
  TestKitchen kitchen = kitchen_with_a_farm("0.10");
  const auto all_from_the_farm = order_of_day(with_cheapest_offers({occasion_of(kitchen)}));
  CHECK(lines_from(all_from_the_farm, "the farm") == 4);
  kitchen.prices.suppliers["the farm"].delivery_charge = money("30");
  CHECK(lines_from(order_of_day(with_cheapest_offers({occasion_of(kitchen)})), "the farm") == 0);
}

TEST_CASE("goods that save too little one by one are moved together") {
  // Each alone would pay the farm's delivery, all of them save the market's.
  TestKitchen kitchen = kitchen_with_a_farm("0.01");
  kitchen.prices.suppliers["the farm"].delivery_charge = money("5");
  kitchen.prices.suppliers["the market"].delivery_charge = money("5");
  const CheapestOrder found = cheapest_order({occasion_of(kitchen)});
  CHECK(lines_from(order_of_day(found.occasions), "the market") == 0);
  CHECK(found.cost == cost_of_order(order_of_day(found.occasions)));
  CHECK(!found.bound);
}

TEST_CASE("cheaper goods that come too late are no choice") {
  TestKitchen kitchen = kitchen_with_a_farm("0.50");
  Supplier& farm = kitchen.prices.suppliers["the farm"];
  farm.closed = {{read_local_day("2027-01-01"), read_local_day("2027-12-31")}};
  CHECK(lines_from(order_of_day(with_cheapest_offers({occasion_of(kitchen)})), "the farm") == 0);
  CHECK(cheaper_offers({occasion_of(kitchen)}).others.empty());
}

TEST_CASE("offers that would be cheaper are named with what they save") {
  TestKitchen kitchen = supper_kitchen();
  CHECK(cheaper_offers({occasion_of(kitchen)}).others.empty());
  Purchase flour = kitchen.prices.entries["flour"].purchases.front();
  flour.supplier = "the mill";
  flour.price = flour.price - money("0.25");
  kitchen.prices.entries["flour"].purchases.push_back(flour);
  const CheaperOffers found = cheaper_offers({occasion_of(kitchen)});
  REQUIRE(found.others.size() == 1);
  CHECK(found.others[0].ingredient == "flour");
  CHECK(found.others[0].instead.supplier == "the mill");
  const Order order = order_of_day({occasion_of(kitchen)});
  const auto& lines = order.suppliers[2].lines;
  REQUIRE(lines[0].ingredient == "flour");
  CHECK(found.saves == money("0.25") * Rational(lines[0].packs));
}
