// SPDX-License-Identifier: MIT
#include "platewright/costing/make_quote.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

QuoteTerms terms_of(PricingRule rule, const Rational& share) {
  QuoteTerms out;
  out.rule = rule;
  out.rule_share = share;
  return out;
}

std::vector<PayingGuests> adults(const Rational& count) {
  return {{"adults", count, 1}};
}

std::string refused(const QuoteTerms& terms) {
  return problem_of([&] { make_quote(money("100"), adults(10), terms, Currency("USD")); }).id;
}

}  // namespace

TEST_CASE("a quote shows every cost") {
  QuoteTerms terms = terms_of(PricingRule::mark_up, fraction(1, 2));
  terms.q_factor = fraction(1, 20);
  terms.labour = {{"cooks", 2, time_of("5 h"), money("24.00") / time_of("1 h")},
                  {"server", 1, time_of("30 min"), money("18.00") / time_of("1 h")}};
  terms.extras = {{"van", money("60.00"), false}, {"linen", money("1.50"), true}};
  terms.overhead = fraction(1, 10);
  const Quote quote =
      make_quote(money("400.00"), {{"adults", 30, 1}, {"crew", 10, 0}}, terms, Currency("USD"));
  CHECK(quote.guests == 40);
  CHECK(quote.full_prices == 30);
  CHECK(quote.q_factor == money("20.00"));
  REQUIRE(quote.labour.size() == 2);
  CHECK(quote.labour[0].time == time_of("10 h"));
  CHECK(quote.labour[0].cost == money("240.00"));
  CHECK(quote.labour[1].cost == money("9.00"));
  CHECK(quote.labour_total == money("249.00"));
  REQUIRE(quote.extras.size() == 2);
  CHECK(quote.extras[0].cost == money("60.00"));
  CHECK(quote.extras[1].count == 40);
  CHECK(quote.extras[1].cost == money("60.00"));
  CHECK(quote.extras_total == money("120.00"));
  CHECK(quote.overhead == money("78.90"));
  CHECK(quote.cost == money("867.90"));
  CHECK(quote.target == money("1301.85"));
  CHECK(quote.exact_price == money("43.395"));
  CHECK(quote.price == money("43.40"));
}

TEST_CASE("a price is rounded up to its step, the shares of it to the minor unit") {
  QuoteTerms terms = terms_of(PricingRule::mark_up, 0);
  terms.round_up_to = money("0.50");
  const Quote quote =
      make_quote(money("301.00"), {{"adults", 10, 1}, {"children", 2, fraction(1, 3)}}, terms,
                 Currency("USD"));
  CHECK(quote.price == money("28.50"));
  REQUIRE(quote.lines.size() == 2);
  CHECK(quote.lines[0].amount == money("285.00"));
  CHECK(quote.lines[1].price == money("9.50"));
  CHECK(quote.subtotal == money("304.00"));

  // Half a cent goes up; a currency without decimals has a step of 1.
  terms.round_up_to = money("0.05");
  const Quote halves = make_quote(
      money("10.05"), {{"adults", 1, 1}, {"children", 0, fraction(1, 2)}}, terms, Currency("USD"));
  CHECK(halves.lines[1].price == money("5.03"));
  terms.round_up_to.reset();
  CHECK(make_quote(money("100"), adults(3), terms, Currency("JPY")).price == money("34"));
  CHECK(make_quote(money("100"), adults(3), terms, Currency("USD")).price == money("33.34"));
}

TEST_CASE("a service charge is taxed or not") {
  QuoteTerms terms = terms_of(PricingRule::mark_up, 0);
  terms.tax = fraction(1, 10);
  CHECK(make_quote(money("200"), adults(10), terms, Currency("USD")).service == Money{});
  CHECK(make_quote(money("200"), adults(10), terms, Currency("USD")).total == money("220.00"));
  terms.service = Charge{fraction(1, 5), true};
  const Quote taxed = make_quote(money("200"), adults(10), terms, Currency("USD"));
  CHECK(taxed.service == money("40.00"));
  CHECK(taxed.taxed == money("240.00"));
  CHECK(taxed.tax == money("24.00"));
  CHECK(taxed.total == money("264.00"));
  terms.service->taxed = false;
  const Quote untaxed = make_quote(money("200"), adults(10), terms, Currency("USD"));
  CHECK(untaxed.taxed == money("200"));
  CHECK(untaxed.total == money("260.00"));
}

TEST_CASE("charges are rounded half up to the minor unit") {
  QuoteTerms terms = terms_of(PricingRule::mark_up, 0);
  terms.service = Charge{fraction(1, 8), false};
  terms.tax = fraction(1, 8);
  const Quote quote = make_quote(money("0.20"), adults(1), terms, Currency("USD"));
  CHECK(quote.service == money("0.03"));
  CHECK(quote.tax == money("0.03"));
  CHECK(quote.total == money("0.26"));
}

TEST_CASE("the outcome follows the price that is asked, not the rule") {
  QuoteTerms terms = terms_of(PricingRule::margin, fraction(2, 5));
  terms.round_up_to = money("30");
  terms.labour = {{"cook", 1, time_of("10 h"), money("20.00") / time_of("1 h")}};
  const Quote quote = make_quote(money("400"), adults(40), terms, Currency("USD"));
  CHECK(quote.exact_price == money("25"));
  CHECK(quote.subtotal == money("1200"));
  CHECK(quote.margin == money("600"));
  CHECK(quote.margin_share == fraction(1, 2));
  CHECK(quote.mark_up_share == 1);
  CHECK(quote.food_share == fraction(1, 3));
}

TEST_CASE("a price that is agreed stays, and the margin takes what is left") {
  QuoteTerms terms = terms_of(PricingRule::margin, fraction(1, 2));
  terms.price_steps = {{10, fraction(1, 10)}};
  terms.agreed_price = money("15.00");
  const Quote quote = make_quote(money("100"), adults(10), terms, Currency("USD"));
  CHECK(quote.exact_price == money("18"));
  CHECK(quote.price == money("15.00"));
  CHECK(quote.subtotal == money("150.00"));
  CHECK(quote.margin_share == fraction(1, 3));
  terms.agreed_price = Money();
  CHECK(refused(terms) == "number-not-positive");
}

TEST_CASE("guests who were guaranteed and do not come pay the full price") {
  QuoteTerms terms = terms_of(PricingRule::margin, 0);
  terms.conditions.guaranteed_guests = 12;
  const std::vector<PayingGuests> guests{
      {"adults", 8, 1}, {"children", 2, fraction(1, 2)}, {"crew", 5, 0}};
  const Quote quote = make_quote(money("90"), guests, terms, Currency("USD"));
  // 90 by 8 + 1 + 2 who pay, and half of that: both up to the cent.
  CHECK(quote.full_prices == 11);
  CHECK(quote.price == money("8.19"));
  REQUIRE(quote.missing);
  CHECK(quote.missing->guests.count == 2);
  CHECK(quote.missing->amount == money("16.38"));
  CHECK(quote.subtotal == money("90.10"));
  CHECK(quote.margin == money("0.10"));
  terms.conditions.guaranteed_guests = 10;
  CHECK(!make_quote(money("90"), guests, terms, Currency("USD")).missing);
}

TEST_CASE("terms that lead to no price are refused") {
  CHECK(refused(terms_of(PricingRule::margin, 1)) == "share-out-of-range");
  CHECK(refused(terms_of(PricingRule::margin, fraction(-1, 100))) == "share-out-of-range");
  CHECK(refused(terms_of(PricingRule::food_cost, 0)) == "share-out-of-range");
  CHECK(refused(terms_of(PricingRule::food_cost, 2)) == "share-out-of-range");
  CHECK(refused(terms_of(PricingRule::mark_up, -1)) == "share-out-of-range");
  QuoteTerms terms;
  terms.tax = fraction(101, 100);
  CHECK(refused(terms) == "share-out-of-range");
  terms = {};
  terms.service = Charge{fraction(101, 100), true};
  CHECK(refused(terms) == "share-out-of-range");
  terms = {};
  terms.q_factor = -1;
  CHECK(refused(terms) == "share-out-of-range");
  terms = {};
  terms.overhead = -1;
  CHECK(refused(terms) == "number-not-positive");
  terms = {};
  terms.round_up_to = money("0");
  CHECK(refused(terms) == "number-not-positive");
  terms = {};
  terms.labour = {{"cook", -1, time_of("1 h"), money("1") / time_of("1 h")}};
  CHECK(refused(terms) == "number-not-positive");
  terms = {};
  terms.extras = {{"van", money(-1), false}};
  CHECK(refused(terms) == "number-not-positive");
}

TEST_CASE("someone must pay, and something must cost") {
  const auto id = [](const char* food, const std::vector<PayingGuests>& guests,
                     const QuoteTerms& terms) {
    return problem_of([&] { make_quote(money(food), guests, terms, Currency("USD")); }).id;
  };
  CHECK(id("100", {}, {}) == "quote-nobody-pays");
  CHECK(id("100", {{"crew", 4, 0}}, {}) == "quote-nobody-pays");
  CHECK(id("100", {{"crew", -4, 1}}, {}) == "number-not-positive");
  CHECK(id("100", {{"crew", 4, -1}}, {}) == "number-not-positive");
  CHECK(id("0", adults(1), {}) == "number-not-positive");
  CHECK(id("0", adults(1), terms_of(PricingRule::food_cost, fraction(1, 4))) ==
        "number-not-positive");
  QuoteTerms all_off;
  all_off.price_steps = {{1, 1}};
  CHECK(id("100", adults(1), all_off) == "number-not-positive");
}
