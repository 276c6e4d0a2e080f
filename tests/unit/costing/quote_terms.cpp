// SPDX-License-Identifier: MIT
// Terms beyond the plain ones: staff by guests, contingency, steps, minimum, gratuity, deposit.

#include "platewright/costing/make_quote.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

QuoteTerms at_cost() {
  QuoteTerms out;
  out.rule = PricingRule::mark_up;
  return out;
}

Quote quote_at(const char* food, const Rational& guests, const QuoteTerms& terms) {
  return make_quote(money(food), {{"guests", guests, 1}}, terms, Currency("USD"));
}

}  // namespace

TEST_CASE("staff follow the guests, the last one whole, and benefits come on top of the wage") {
  QuoteTerms terms = at_cost();
  terms.labour = {
      {"server", 1, time_of("6 h"), money("20.00") / time_of("1 h"), fraction(1, 4), 20}};
  const Quote quote = quote_at("100", 84, terms);
  REQUIRE(quote.labour.size() == 1);
  CHECK(quote.labour[0].workers == 5);
  CHECK(quote.labour[0].cost == money("750"));  // 5 x 6 h x 25
  CHECK(quote_at("100", 80, terms).labour[0].workers == 4);
}

TEST_CASE("an overhead may be a share and a sum, and a contingency is a share of everything") {
  QuoteTerms terms = at_cost();
  terms.overhead = fraction(1, 10);
  terms.overhead_of_event = money("90");
  terms.contingency = fraction(1, 20);
  const Quote quote = quote_at("100", 10, terms);
  CHECK(quote.overhead == money("100"));
  CHECK(quote.contingency == money("10"));
  CHECK(quote.cost == money("210"));
}

TEST_CASE("of the steps of the price the highest that is reached counts") {
  QuoteTerms terms = at_cost();
  terms.price_steps = {{100, fraction(1, 10)}, {50, fraction(1, 20)}};
  CHECK(quote_at("4900", 49, terms).exact_price == money("100"));
  CHECK(quote_at("5000", 50, terms).exact_price == money("95"));
  CHECK(quote_at("10000", 100, terms).exact_price == money("90"));
}

TEST_CASE("a subtotal below the minimum charge is raised to it") {
  QuoteTerms terms = at_cost();
  terms.minimum_charge = money("500");
  const Quote small = quote_at("300", 10, terms);
  CHECK(small.minimum_raise == money("200"));
  CHECK(small.subtotal == money("500"));
  CHECK(small.margin == money("200"));
  CHECK(quote_at("600", 10, terms).minimum_raise == Money());
}

TEST_CASE("an extra that is billed stands on the bill and not in the price") {
  QuoteTerms terms = at_cost();
  terms.tax = fraction(1, 10);
  ExtraLine tent{"tent", money("100"), false};
  tent.billed = true;
  ExtraLine delivery = tent;
  delivery.name = "delivery";
  delivery.taxed = false;
  terms.extras = {tent, delivery};
  const Quote quote = quote_at("300", 10, terms);
  CHECK(quote.price == money("30"));
  CHECK(quote.billed_total == money("200"));
  CHECK(quote.taxed == money("400"));
  CHECK(quote.total == money("540"));
  CHECK(quote.cost == money("300"));
}

TEST_CASE("a gratuity stands beside the service charge, each taxed or not") {
  QuoteTerms terms = at_cost();
  terms.tax = fraction(1, 10);
  terms.service = Charge{fraction(1, 5), true};
  terms.gratuity = Charge{fraction(1, 10), false};
  const Quote quote = quote_at("100", 1, terms);
  CHECK(quote.gratuity == money("10"));
  CHECK(quote.tax == money("12"));
  CHECK(quote.total == money("142"));
}

TEST_CASE("service is charged before the tax or after it") {
  QuoteTerms terms = at_cost();
  terms.tax = fraction(1, 10);
  terms.service = Charge{fraction(1, 5), false, true};
  const Quote quote = quote_at("100", 1, terms);
  CHECK(quote.tax == money("10"));
  CHECK(quote.service == money("22"));
  CHECK(quote.total == money("132"));
  terms.service->taxed = true;
  CHECK(problem_of([&] { quote_at("100", 1, terms); }).id == "charge-taxed-after-tax");
}

TEST_CASE("where the price is not taxed only the charges are") {
  QuoteTerms terms = at_cost();
  terms.price_taxed = false;
  terms.tax = fraction(1, 10);
  terms.service = Charge{fraction(1, 5), true};
  CHECK(quote_at("100", 1, terms).tax == money("2"));
}

TEST_CASE("deposit and balance make the total") {
  QuoteTerms terms = at_cost();
  terms.conditions.deposit = Deposit{fraction(1, 3), {}, {}};
  const Quote share = quote_at("100", 1, terms);
  CHECK(share.deposit == money("33.33"));
  CHECK(share.balance == money("66.67"));
  terms.conditions.deposit = Deposit{{}, money("50"), {}};
  CHECK(quote_at("100", 1, terms).balance == money("50"));
  CHECK(quote_at("100", 1, at_cost()).balance == money("100"));
}

TEST_CASE("terms outside their range are refused") {
  const auto refused = [](const QuoteTerms& terms) {
    return problem_of([&] { quote_at("100", 1, terms); }).id;
  };
  QuoteTerms terms = at_cost();
  terms.contingency = 2;
  CHECK(refused(terms) == "share-out-of-range");
  terms = at_cost();
  terms.gratuity = Charge{2, false};
  CHECK(refused(terms) == "share-out-of-range");
  terms = at_cost();
  terms.price_steps = {{10, 2}};
  CHECK(refused(terms) == "share-out-of-range");
  terms = at_cost();
  terms.conditions.deposit = Deposit{Rational(2), {}, {}};
  CHECK(refused(terms) == "share-out-of-range");
}

TEST_CASE("a deposit is never more than the total") {
  QuoteTerms terms;
  terms.conditions.deposit = Deposit{{}, money("5000"), {}};
  const Quote quote = make_quote(money("100"), {{"guests", 10, 1}}, terms, Currency("USD"));
  CHECK(quote.total == money("100.00"));
  CHECK(quote.deposit == quote.total);
  CHECK(quote.balance == Money{});
}

// 40 adults and 20 children at half the price are 60 heads and 50 full prices.
TEST_CASE("a step of the price is reached by heads, not by full prices") {
  QuoteTerms terms;
  terms.price_steps = {{55, fraction(1, 10)}};
  const std::vector<PayingGuests> guests{{"adults", 40, 1}, {"children", 20, fraction(1, 2)}};
  const Quote quote = make_quote(money("900"), guests, terms, Currency("USD"));
  CHECK(quote.full_prices == 50);
  CHECK(quote.step_off == fraction(1, 10));
  CHECK(quote.price == money("16.20"));
}
