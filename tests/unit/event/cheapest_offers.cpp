// SPDX-License-Identifier: MIT
// The offer with which an event's order comes to least.

#include "platewright/event/cheapest_offers.hpp"

#include "support/catch.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// What the supper's order comes to, and from whom one ingredient is bought.
struct Bought {
  Money total;
  std::string from;
};

Bought cheapest(const TestKitchen& kitchen, const std::string& ingredient) {
  const auto occasions =
      with_cheapest_offers(std::vector<Occasion>{{supper(), kitchen.book, kitchen.prices}});
  return {order_of_day(occasions).total,
          occasions.front().prices.find(ingredient)->purchases.front().supplier};
}

Money as_written(const TestKitchen& kitchen) {
  return order_of_day({supper()}, kitchen.book, kitchen.prices).total;
}

}  // namespace

TEST_CASE("pieces that are cheaper by the pound lose where more of them must be bought") {
  TestKitchen kitchen = supper_kitchen();
  // 8.50 for 9.00 a pound, but 3 legs of 12 lb (306.00) instead of 4 of 7.5 lb (270.00)
  kitchen.prices.entries["lamb leg"].purchases.push_back(piece("12 lb", "102.00", "the farm"));
  CHECK(cheapest(kitchen, "lamb leg").from == "the butcher");
  CHECK(cheapest(kitchen, "lamb leg").total == as_written(kitchen));
}

TEST_CASE("a small pack wins over a large one that is cheaper by the pound") {
  TestKitchen kitchen = supper_kitchen();
  auto& offers = kitchen.prices.entries["anchovy"].purchases;
  // 10.295 oz: 3 packs of 4 oz for 9.00, or one jar
  offers.push_back(pack("5 lb", "20.00", "the importer"));
  CHECK(cheapest(kitchen, "anchovy").from == "the fishmonger");
  offers.push_back(pack("11 oz", "8.80", "the deli"));
  CHECK(cheapest(kitchen, "anchovy").from == "the deli");
  CHECK(cheapest(kitchen, "anchovy").total == as_written(kitchen) - money("0.20"));
}

TEST_CASE("of equal offers the first stays, and one in another measure is passed over") {
  TestKitchen kitchen = supper_kitchen();
  auto& offers = kitchen.prices.entries["anchovy"].purchases;
  offers.push_back(pack("4 oz", "3.00", "the deli"));
  offers.push_back(pack("1 tbsp", "0.01", "the pharmacy"));
  CHECK(cheapest(kitchen, "anchovy").from == "the fishmonger");
}

TEST_CASE("a recipe alone is bought for by the size that it is made at") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.entries["anchovy"].purchases.push_back(pack("5 lb", "20.00", "the importer"));
  const Recipe& paste = kitchen.book.recipe("anchovy paste");
  const auto from = [&](const Rational& factor) {
    const PriceList cheapest = with_cheapest_offers(
        scale(paste, plan_for_factor(paste, factor, kitchen.book), kitchen.book), kitchen.book,
        kitchen.prices);
    return cheapest.find("anchovy")->purchases.front().supplier;
  };
  CHECK(from(1) == "the fishmonger");
  CHECK(from(20) == "the importer");
}
