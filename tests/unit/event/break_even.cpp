// SPDX-License-Identifier: MIT
#include "platewright/event/break_even.hpp"

#include "support/catch.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Adults who eat bread whose flour costs 1.00 each, at this margin and with 100.00 of hire.
Occasion bread_for(const Rational& adults, const Rational& margin) {
  Occasion out;
  TestKitchen kitchen;
  kitchen.add(ingredient("flour"), pack("1 lb", "1.00"));
  kitchen.add(recipe_for("bread", 1, {line("flour", "1 lb")}));
  out.book = kitchen.book;
  out.prices = kitchen.prices;
  out.event.guests = {{"adults", adults, 1, 1}};
  out.event.menu = {{"bread", 1, {}}};
  out.event.terms.rule = PricingRule::margin;
  out.event.terms.rule_share = margin;
  out.event.terms.extras = {{"hire", money("100.00")}};
  return out;
}

}  // namespace

TEST_CASE("the hire is covered by what each guest leaves") {
  // 50 guests cost 150 and pay 6.00 each; a guest leaves 5.00, so 20 of them cover the 100.
  CHECK(break_even(bread_for(50, fraction(1, 2)))->guests == 20);
  // At no margin all of them are needed.
  CHECK(break_even(bread_for(50, 0))->guests == 50);
}

TEST_CASE("workers come whole for so many guests, and fewer guests need fewer of them") {
  Occasion occasion = bread_for(40, 0);
  occasion.event.terms.extras.clear();
  occasion.event.terms.labour = {
      {"server", 1, time_of("1 h"), money("10.00") / time_of("1 h"), 0, Rational(20)}};
  // 40 guests pay 1.50 each. 39 need two workers as well and bring 58.50 against 59.
  CHECK(break_even(occasion)->guests == 40);
}

TEST_CASE("a price below the cost may be made good by more guests, or by none") {
  Occasion occasion = bread_for(50, 0);
  occasion.event.terms.agreed_price = money("2.00");
  // Each of them leaves 1.00.
  CHECK(break_even(occasion)->guests == 100);
  occasion.event.terms.agreed_price = money("0.90");
  CHECK(!break_even(occasion));
}

TEST_CASE("what is guaranteed already does not hide how many guests are needed") {
  Occasion occasion = bread_for(50, fraction(1, 2));
  occasion.event.terms.conditions.guaranteed_guests = 50;
  CHECK(break_even(occasion)->guests == 20);
}

namespace {

/// The number that walking guest by guest comes to.
Integer walked(const Occasion& occasion) {
  const Money price = quote_of(occasion).price;
  const auto margin_at = [&](const Integer& guests) {
    Occasion other = occasion;
    other.event.terms.agreed_price = price;
    change_guests(other.event, Rational(guests));
    return quote_of(other).margin;
  };
  Integer guests = floor_of(guest_count(occasion.event));
  // Prices of children are rounded, so that even all who are expected may leave less than nothing.
  if (margin_at(guests) < Money()) {
    while (margin_at(guests) < Money()) ++guests;
    return guests;
  }
  while (guests > 1 && margin_at(guests - 1) >= Money()) --guests;
  return guests;
}

}  // namespace

TEST_CASE("ten million guests take no walk") {
  const auto even = break_even(bread_for(10'000'000, fraction(1, 2)));
  // Each pays 2.01 and costs 1.00: 2.00 and its share of the hire, rounded up.
  REQUIRE(even);
  CHECK(even->is_fewest);
  CHECK(even->guests == 100);
}

TEST_CASE("the search comes to what walking guest by guest comes to") {
  for (const int adults : {2, 3, 49, 50, 51, 300}) {
    for (const int percent : {0, 1, 7, 50, 90}) {
      Occasion occasion = bread_for(adults, fraction(percent, 100));
      occasion.event.terms.labour = {
          {"server", 1, time_of("1 h"), money("10.00") / time_of("1 h"), 0, Rational(7)}};
      occasion.event.guests.push_back(
          {"children", (adults + 6) / 7, fraction(1, 2), fraction(1, 3)});
      occasion.event.guests.push_back({"crew", (adults + 16) / 17, 1, 0});
      const auto even = break_even(occasion);
      REQUIRE(even);
      CHECK(even->is_fewest);
      CHECK(even->guests == walked(occasion));
    }
  }
}

TEST_CASE("deliveries are covered, too, however many there are for so many guests") {
  for (const int adults : {2, 49, 50, 51, 300}) {
    for (const int percent : {1, 7, 50, 90}) {
      Occasion occasion = bread_for(adults, fraction(percent, 100));
      PriceEntry& flour = occasion.prices.entries["flour"];
      flour.purchases.front().supplier = "the mill";
      // From the 41st guest on it has to come.
      flour.in_store = amount("40 lb");
      occasion.prices.suppliers["the mill"].delivery_charge = money("37.50");
      const auto even = break_even(occasion);
      REQUIRE(even);
      CHECK(even->is_fewest);
      CHECK(even->guests == walked(occasion));
    }
  }
}

TEST_CASE("where guests leave nothing the search ends, and says that it did") {
  // What each pays is what each costs: no range of numbers is told apart from a loss by its ends.
  Occasion occasion = bread_for(10'000'000, 0);
  occasion.event.terms.extras.clear();
  const auto even = break_even(occasion);
  REQUIRE(even);
  CHECK_FALSE(even->is_fewest);
  CHECK(even->guests > 1);
}
