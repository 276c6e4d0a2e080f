// SPDX-License-Identifier: MIT
// Prices and quotes against published figures.

#include "platewright/costing/make_quote.hpp"
#include "platewright/costing/plate_cost.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

QuoteTerms terms_of(PricingRule rule, const Rational& share) {
  QuoteTerms out;
  out.rule = rule;
  out.rule_share = share;
  return out;
}

/// A service charge of 20 % and a sales tax of 8.625 % on a given price.
Quote invoice(bool service_taxed) {
  QuoteTerms terms = terms_of(PricingRule::mark_up, 0);
  terms.service = Charge{fraction(1, 5), service_taxed};
  terms.tax = printed("0.08625");
  const Rational reduced = fraction(35, 107);
  return make_quote(money("9760.00"),
                    {{"adults", 85, 1}, {"crew", 8, reduced}, {"children", 11, reduced}}, terms,
                    Currency("USD"));
}

}  // namespace

// Holt, MTH 81 lecture notes, chapter 11: 173.89 for 200 portions at a target food cost of 25 %;
// the portion is .86945, not rounded before it is divided, and the price 3.48.
TEST_CASE("a food cost of 25 %: 173.89 for 200") {
  TestKitchen kitchen;
  kitchen.add(ingredient("stew"), pack("50 lb", "173.89"));
  kitchen.add(recipe_for("stew for 200", 200, {line("stew", "50 lb")}));
  const Recipe& recipe = kitchen.book.recipe("stew for 200");
  const PlateCost cost =
      plate_cost(scale(recipe, plan_for_factor(recipe, 1, kitchen.book), kitchen.book),
                 kitchen.book, kitchen.prices);
  CHECK(cost.per_portion == money("0.86945"));
  const Quote quote = make_quote(cost.total, {{"guests", 200, 1}},
                                 terms_of(PricingRule::food_cost, fraction(1, 4)), Currency("USD"));
  CHECK(quote.exact_price == money("3.4778"));
  CHECK(quote.price == money("3.48"));
  const Money price = price_at_food_cost(*cost.per_portion, fraction(1, 4));
  CHECK(price == money("3.4778"));
  CHECK(food_cost_share(*cost.per_portion, price) == fraction(1, 4));
}

// A class deck on event pricing: overhead 200,000 and profit 120,000 a year over 150 events, 100
// servings of food at 6.52 for 50 guests, four workers at 20 for 4 h. It prints 1,333 and 3,105
// (the overhead cut off to whole dollars), 62.10 a guest, and quotes 64 without naming a rule; a
// step of 2 gives the same.
TEST_CASE("an event for 50 guests of two servings: 62.10 a guest, quoted 64") {
  QuoteTerms terms = terms_of(PricingRule::mark_up, 0);
  terms.labour = {{"staff", 4, time_of("4 h"), money("20.00") / time_of("1 h")}};
  terms.extras = {{"overhead of an event", money(fraction(200000, 150)), false},
                  {"profit of an event", money(fraction(120000, 150)), false}};
  terms.round_up_to = money("2");
  const Quote quote =
      make_quote(money("6.52") * Rational(100), {{"guests", 50, 1}}, terms, Currency("USD"));
  CHECK(quote.food == money("652.00"));
  CHECK(quote.labour_total == money("320.00"));
  CHECK(down_to(amount_of(quote.extras[0].cost), 1) == 1333);
  CHECK(quote.extras[1].cost == money("800.00"));
  CHECK(down_to(amount_of(quote.cost), 1) == 3105);
  CHECK(down_to(amount_of(quote.exact_price), printed("0.10")) == printed("62.10"));
  CHECK(quote.price == money("64.00"));
}

// New York State TSB-M-09(13)S, as worked in an invoice: a mandatory service charge is taxed.
TEST_CASE("a caterer's invoice in New York: the service charge is taxed") {
  const Quote quote = invoice(true);
  CHECK(quote.price == money("107.00"));
  REQUIRE(quote.lines.size() == 3);
  CHECK(quote.lines[1].price == money("35.00"));
  CHECK(quote.lines[2].amount == money("385.00"));
  CHECK(quote.subtotal == money("9760.00"));
  CHECK(quote.service == money("1952.00"));
  CHECK(quote.taxed == money("11712.00"));
  CHECK(quote.tax == money("1010.16"));
  CHECK(quote.total == money("12722.16"));
}

// The same source: a voluntary tip is not taxed.
TEST_CASE("a caterer's invoice in New York: a voluntary tip is not taxed") {
  const Quote quote = invoice(false);
  CHECK(quote.taxed == money("9760.00"));
  CHECK(quote.tax == money("841.80"));
  CHECK(quote.total == money("12553.80"));
}

// Arithmetic of the trade: 60 / (1 - 40 %) and 60 x (1 + 40 %).
TEST_CASE("a margin of 40 % is not a mark-up of 40 %") {
  const std::vector<PayingGuests> guest{{"guest", 1, 1}};
  const Rational share = fraction(2, 5);
  const Quote margin =
      make_quote(money("60"), guest, terms_of(PricingRule::margin, share), Currency("USD"));
  const Quote mark_up =
      make_quote(money("60"), guest, terms_of(PricingRule::mark_up, share), Currency("USD"));
  CHECK(margin.price == money("100.00"));
  CHECK(margin.margin_share == share);
  CHECK(margin.mark_up_share == fraction(2, 3));
  CHECK(mark_up.price == money("84.00"));
  CHECK(mark_up.mark_up_share == share);
  CHECK(mark_up.margin_share == fraction(2, 7));
}
