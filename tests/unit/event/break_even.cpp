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
  CHECK(break_even(bread_for(50, fraction(1, 2))) == Integer(20));
  // At no margin all of them are needed.
  CHECK(break_even(bread_for(50, 0)) == Integer(50));
}

TEST_CASE("workers come whole for so many guests, and fewer guests need fewer of them") {
  Occasion occasion = bread_for(40, 0);
  occasion.event.terms.extras.clear();
  occasion.event.terms.labour = {
      {"server", 1, time_of("1 h"), money("10.00") / time_of("1 h"), 0, Rational(20)}};
  // 40 guests pay 1.50 each. 39 need two workers as well and bring 58.50 against 59.
  CHECK(break_even(occasion) == Integer(40));
}

TEST_CASE("a price below the cost may be made good by more guests, or by none") {
  Occasion occasion = bread_for(50, 0);
  occasion.event.terms.agreed_price = money("2.00");
  // Each of them leaves 1.00.
  CHECK(break_even(occasion) == Integer(100));
  occasion.event.terms.agreed_price = money("0.90");
  CHECK(!break_even(occasion));
}

TEST_CASE("what is guaranteed already does not hide how many guests are needed") {
  Occasion occasion = bread_for(50, fraction(1, 2));
  occasion.event.terms.conditions.guaranteed_guests = 50;
  CHECK(break_even(occasion) == Integer(20));
}
