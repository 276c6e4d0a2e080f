// SPDX-License-Identifier: MIT
// Other prices, other guests, swaps, what moves the price, and the budget turned round.

#include "platewright/event/budget.hpp"
#include "platewright/event/guest_table.hpp"
#include "platewright/event/price_movers.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Occasion occasion() {
  const TestKitchen kitchen = supper_kitchen();
  Occasion out{supper(), kitchen.book, kitchen.prices};
  out.event.terms.rule = PricingRule::margin;
  out.event.terms.rule_share = fraction(3, 10);
  out.event.terms.q_factor = fraction(1, 20);
  out.event.terms.overhead = fraction(1, 10);
  out.event.terms.labour = {{"cook", 2, time_of("8 h"), money("25.00") / time_of("1 h")}};
  return out;
}

PriceChange price_change(const char* text) {
  return read_price_change(text, unit_table(), MeasuringSystem::us);
}

}  // namespace

TEST_CASE("a change of a price is a share up or down, or a price for the pack") {
  CHECK(price_change("lamb leg=+12 %").factor == fraction(112, 100));
  CHECK(price_change("lamb leg=-5%").factor == fraction(95, 100));
  CHECK(price_change("leg = a cut = 72.00").ingredient == "leg = a cut");
  CHECK(price_change("leg=72.00").price == money("72"));
  CHECK(price_change("leg=9.40 per lb").per->name() == "pound");
  CHECK(problem_of([] { price_change("lamb leg=+12"); }).id == "change-malformed");
  CHECK(problem_of([] { price_change("lamb leg"); }).id == "change-malformed");
  CHECK(problem_of([] { price_change("=+12 %"); }).id == "change-malformed");
  CHECK(problem_of([] { price_change("lamb leg=-101 %"); }).id == "share-out-of-range");
  CHECK(problem_of([] { read_swap("lamb leg="); }).id == "change-malformed");
}

TEST_CASE("a dearer lamb moves the food by its own cost alone") {
  Occasion dearer = occasion();
  const Quote before = quote_of(dearer);
  change_price(dearer, price_change("lamb leg=+12 %"));
  // 30 lb at 9.00
  CHECK(quote_of(dearer).food - before.food == money("270.00") * fraction(12, 100));
  CHECK(problem_of([&] { change_price(dearer, {"salt", 2, {}}); }).id == "price-missing");
  CHECK(problem_of([&] { change_price(dearer, {"lamb", 2, {}}); }).id == "name-unknown");
}

TEST_CASE("a new price is for a pack, or for a unit of what goes by weight") {
  Occasion changed = occasion();
  change_price(changed, price_change("lamb leg=10.00 per lb"));
  CHECK(changed.prices.find("lamb leg")->purchases.front().price == money("75.00"));
  change_price(changed, price_change("flour=18.50"));
  CHECK(changed.prices.find("flour")->purchases.front().price == money("18.50"));
  CHECK(problem_of([&] { change_price(changed, price_change("lamb leg=10.00")); }).id ==
        "change-of-a-piece");
}

TEST_CASE("other guests keep the mix, each kind whole") {
  Event event = supper();
  change_guests(event, 100);
  CHECK(event.guests[0].count == 83);
  CHECK(event.guests[1].count == 12);
  CHECK(event.guests[2].count == 5);
  CHECK(guest_count(event) == 100);
  CHECK(problem_of([&] { change_guests(event, fraction(1, 2)); }).id == "number-not-positive");
}

TEST_CASE("a cut in place of another serves the same weight") {
  Occasion swapped = occasion();
  Ingredient leaner = swapped.book.ingredient("lamb leg");
  leaner.name = "boned leg";
  Rung served;
  served.to = Stage::served;
  served.yield = fraction(3, 4);
  leaner.ladder = Ladder({served});
  swapped.book.add(leaner);
  swapped.prices.entries["boned leg"] = swapped.prices.entries["lamb leg"];
  swapped.book.recipes.change(
      "flat bread", [&](Recipe& recipe) { recipe.lines.push_back(line("lamb leg", "3 lb")); });
  swap_in(swapped, {"lamb leg", "boned leg"});
  // Half of a leg is served, three quarters of a boned one: 10 portions become 15.
  CHECK(swapped.book.recipe("roast lamb").makes.portions == Rational(15));
  CHECK(swapped.book.recipe("roast lamb").lines.front().amount == amount("7.5 lb"));
  CHECK(swapped.book.recipe("flat bread").lines.back().amount == amount("2 lb"));
}

TEST_CASE("a swap takes the same amount of another thing") {
  Occasion swapped = occasion();
  const Money before = quote_of(swapped).food;
  swap_in(swapped, {"olive oil", "water"});
  CHECK(quote_of(swapped).food < before);
  Occasion menu = occasion();
  swap_in(menu, {"roast lamb", "flat bread"});
  CHECK(menu.event.menu[0].recipe == "flat bread");
  CHECK(problem_of([&] { swap_in(menu, {"parsley", "cress"}); }).id == "name-unknown");
  CHECK(problem_of([&] { swap_in(swapped, {"olive oil", "water"}); }).id == "swap-of-nothing");
}

TEST_CASE("the lamb moves the price most, and by just what a quote says") {
  const Rational change = fraction(1, 10);
  const auto movers = price_movers(occasion(), change, 5);
  REQUIRE(movers.size() == 5);
  CHECK(movers[0].ingredient == "lamb leg");
  Occasion dearer = occasion();
  const Money before = quote_of(dearer).exact_price;
  change_price(dearer, {"lamb leg", fraction(11, 10), {}});
  const Money moved = quote_of(dearer).exact_price - before;
  CHECK((movers[0].moved == moved || movers[1].moved == moved));
  for (std::size_t i = 1; i < movers.size(); ++i) CHECK(movers[i - 1].moved >= movers[i].moved);
  CHECK(problem_of([] { price_movers(occasion(), 1); }).id == "share-out-of-range");
}

TEST_CASE("a table of guests is one quote for each number") {
  const auto rows = guest_table(occasion(), {40, 84});
  REQUIRE(rows.size() == 2);
  CHECK(rows[1].quote.price == quote_of(occasion()).price);
  // The cooks are shared by fewer guests.
  CHECK(rows[0].quote.exact_price > rows[1].quote.exact_price);
  // At the price that is quoted for 79 they leave less; 84 leave more.
  CHECK(rows[0].turned_up.price == quote_of(occasion()).price);
  CHECK(rows[0].turned_up.cost == rows[0].quote.cost);
  CHECK(rows[0].turned_up.margin < rows[1].turned_up.margin);
}

TEST_CASE("the budget turned round: what a price leaves for the cut") {
  const Occasion asked = occasion();
  const Quote quote = quote_of(asked);
  Budget budget{quote.exact_price, fraction(3, 10), "roast lamb", {"lamb leg"}, {ounces(5)}};
  budget.portions.push_back(ounces(9));
  const BudgetAnswer answer = turn_round(asked, budget);
  // At the price that the margin asks, all that is left for the cut is what it costs.
  CHECK(answer.food == quote.food);
  CHECK(answer.for_cut == money("270.00"));
  REQUIRE(answer.choices.size() == 2);
  // 79 x 40 % x 1.05 = 33.18 portions at 18.00 a served pound
  CHECK(answer.portions == printed("33.18"));
  CHECK(answer.choices[0].cost == money("18") * fraction(5, 16) * printed("33.18"));
  CHECK(answer.choices[0].fits);
  CHECK(!answer.choices[1].fits);
  CHECK(*answer.choices[0].largest == pounds(1) * (Rational(270) / (18 * printed("33.18"))));
}

TEST_CASE("a budget asks for a dish of the menu with a cut in it") {
  Budget budget{money("20"), fraction(3, 10), "green sauce", {"lamb leg"}, {ounces(5)}};
  CHECK(problem_of([&] { turn_round(occasion(), budget); }).id == "name-unknown");
  budget.dish = "flat bread";
  CHECK(problem_of([&] { turn_round(occasion(), budget); }).id == "budget-without-cut");
  budget.margin = 1;
  CHECK(problem_of([&] { turn_round(occasion(), budget); }).id == "share-out-of-range");
}
