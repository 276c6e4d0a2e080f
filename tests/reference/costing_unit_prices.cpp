// SPDX-License-Identifier: MIT
// Unit prices and amounts to buy, against published figures.

#include "platewright/event/order.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

// A purveyor's note: an inside round of 20 lb at 2.50 a pound loses 4 lb and 4 lb; with 1.00 a
// pound of labour, which enters before the yield, it prints 60 % and 5.83 for a usable pound.
TEST_CASE("an inside round at 60 %: the edible-portion price") {
  const Ingredient round = ingredient("inside round", fraction(20 - 4 - 4, 20));
  const Purchase bought = pack("20 lb", "70.00");  // 20 x (2.50 + 1.00)
  const Bought usable = bought_for(amount("12 lb"), Stage::trimmed, round, bought);
  CHECK(usable.yield == fraction(3, 5));
  CHECK(to_mass(usable.amount) == pounds(20));
  const UnitPrice price = edible_portion_price(unit_price(bought), usable.yield);
  CHECK(price.price == money(fraction(35, 6)));
  CHECK(half_up(amount_of(price.price), printed("0.01")) == printed("5.83"));
}

// USDA Food Buying Guide, appendix B: 2 lb of usable watermelon at a yield of .61 are 3.28 lb to
// buy, 3.5 lb when it is bought by the half pound.
TEST_CASE("watermelon at .61: the weight to buy and the order") {
  const Ingredient watermelon = ingredient("watermelon", printed("0.61"));
  const Purchase half_pound = pack("1/2 lb", "0.50");
  const Bought bought = bought_for(amount("2 lb"), Stage::trimmed, watermelon, half_pound);
  CHECK(half_up(bought.amount.number, printed("0.01")) == printed("3.28"));
  Need need;
  need.ingredient = "watermelon";
  const OrderLine line = order_line(need, bought.amount, half_pound);
  CHECK(line.packs == 7);
  CHECK(line.ordered == amount("3.5 lb"));
}
