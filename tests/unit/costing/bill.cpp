// SPDX-License-Identifier: MIT
// A bill worked by hand, and its parts one by one.

#include "platewright/costing/divide_bill.hpp"
#include "platewright/costing/make_quote.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// At cost, so that the price of 40 guests for 2000 is 50.
QuoteTerms at_cost_of_food() {
  QuoteTerms out;
  out.rule = PricingRule::mark_up;
  return out;
}

Quote quote_of_guests(const char* food, const std::vector<PayingGuests>& guests,
                      const QuoteTerms& terms) {
  return make_quote(money(food), guests, terms, Currency("EUR"));
}

const Taxed food_and_drinks({TaxedPart{0, fraction(7, 10)}, TaxedPart{1, fraction(3, 10)}});

/// Two rates in the prices. That drinks are 30 % of a price for food and drinks together is what
/// the German ministry of finance lets a caterer reckon (letter of 2 July 2020, III C 2 - S
/// 7030/20/10006 :006); 7 % and 19 % are the rates there.
QuoteTerms terms_by_hand() {
  QuoteTerms out = at_cost_of_food();
  out.rule = PricingRule::margin;
  out.rule_share = fraction(3, 5);
  out.round_up_to = money("0.50");
  out.prices_include_tax = true;
  out.tax = TaxRates({TaxRate{"food", fraction(7, 100)}, TaxRate{"drinks", fraction(19, 100)}});
  out.price_taxed = food_and_drinks;
  const Taxed as_drinks({TaxedPart{1, 1}});
  out.extras = {ExtraLine{"tent", money("595"), false, true, as_drinks}};
  out.service = Charge{fraction(1, 20), as_drinks};
  out.discounts = {{"returning", fraction(1, 10), {}, {}}, {"no walls", {}, money("50"), "tent"}};
  out.conditions.deposit = Deposit{fraction(3, 10), {}, {}};
  out.conditions.second_deposit = Deposit{fraction(2, 5), {}, {}};
  return out;
}

std::vector<PayingGuests> party() {
  return {{"adults", 40, 1, std::nullopt, ""},
          {"children", 10, 1, money("15"), "the parents"},
          {"band", 5, 1, money("12"), "the agency"}};
}

}  // namespace

TEST_CASE("a bill worked by hand") {
  // Cost 800, margin 60 %: 800 / 0.4 = 2000 without tax. Left of a price without its tax:
  // 0.7 / 1.07 + 0.3 / 1.19 = 0.9063064; 2000 / 0.9063064 = 2206.76; children and band bring in
  // 150 + 60; (2206.76 - 210) / 40 = 49.92, up to 50.00.
  const Quote quote = quote_of_guests("800", party(), terms_by_hand());
  CHECK(quote.target == money("2000"));
  CHECK(quote.net_share == fraction(70, 107) + fraction(30, 119));
  CHECK(quote.own_prices == money("210"));
  CHECK(quote.price == money("50"));
  // 40 x 50 + 10 x 15 + 5 x 12 = 2210; 10 % off.
  REQUIRE(quote.discounts.size() == 1);
  CHECK(quote.discounts[0].amount == money("221"));
  CHECK(quote.subtotal == money("1989"));
  CHECK(quote.billed_total == money("545"));
  CHECK(quote.service == money("99.45"));
  CHECK(quote.total == money("2633.45"));
  // 70 % of 1989 is food: 1392.30 x 7 / 107. The rest, tent and service: 1241.15 x 19 / 119.
  REQUIRE(quote.taxes.size() == 2);
  CHECK(quote.taxes[0].base == money("1392.30"));
  CHECK(quote.taxes[0].tax == money("91.09"));
  CHECK(quote.taxes[1].base == money("1241.15"));
  CHECK(quote.taxes[1].tax == money("198.17"));
  CHECK(quote.deposit == money("790.04"));
  CHECK(quote.second_deposit == money("1053.38"));
  CHECK(quote.balance == money("790.03"));
  // What is kept: 1989 x 0.9063064 = 1802.64, less the 50 off the tent without tax, 42.02.
  CHECK(quote.lost_on_extras == money("50") / fraction(119, 100));
  CHECK(quote.income == money("1989") * quote.net_share - quote.lost_on_extras);
}

TEST_CASE("the same bill is divided among those who pay") {
  const Quote quote = quote_of_guests("800", party(), terms_by_hand());
  const std::vector<PayerShare> payers = divide_bill(quote);
  REQUIRE(payers.size() == 3);
  // The tent, 545, is the client's; 2088.45 are shared by 2000 : 150 : 60 of 2210:
  // 1890 + 545, 141.75 and 56.70, exactly.
  CHECK(payers[0].payer.empty());
  CHECK(payers[0].share == money("2435.00"));
  CHECK(payers[1].share == money("141.75"));
  CHECK(payers[2].share == money("56.70"));
}

TEST_CASE("shares of a bill that are no whole cents are rounded so that they sum to it") {
  QuoteTerms terms = at_cost_of_food();
  terms.agreed_price = money("10");
  terms.service = Charge{fraction(1, 100)};
  const Quote quote = quote_of_guests("9",
                                      {{"a", 1, 1, std::nullopt, "one"},
                                       {"b", 1, 1, std::nullopt, "two"},
                                       {"c", 1, 1, std::nullopt, "three"}},
                                      terms);
  CHECK(quote.total == money("30.30"));
  terms.service = Charge{fraction(1, 75)};
  const Quote odd = quote_of_guests("9",
                                    {{"a", 1, 1, std::nullopt, "one"},
                                     {"b", 1, 1, std::nullopt, "two"},
                                     {"c", 1, 1, std::nullopt, "three"}},
                                    terms);
  CHECK(odd.total == money("30.40"));
  const auto payers = divide_bill(odd);
  REQUIRE(payers.size() == 4);
  CHECK(payers[0].share == Money());
  CHECK(payers[1].share == money("10.14"));
  CHECK(payers[2].share == money("10.13"));
  CHECK(payers[3].share == money("10.13"));
}

TEST_CASE("two rates on top of the prices") {
  QuoteTerms terms = at_cost_of_food();
  terms.tax = TaxRates({TaxRate{"food", fraction(7, 100)}, TaxRate{"hire", fraction(19, 100)}});
  terms.extras = {ExtraLine{"tent", money("100"), false, true, Taxed({TaxedPart{1, 1}})}};
  const Quote quote = quote_of_guests("2000", {{"guests", 40, 1}}, terms);
  CHECK(quote.price == money("50"));
  CHECK(quote.tax == money("159"));  // 140 + 19
  CHECK(quote.total == money("2259"));
  CHECK(quote.income == quote.subtotal);
}

TEST_CASE("a price is split to the cent among its rates by largest remainder") {
  QuoteTerms terms = at_cost_of_food();
  terms.tax = TaxRates({TaxRate{"a", fraction(1, 10)}, TaxRate{"b", fraction(1, 5)}});
  terms.price_taxed = Taxed({TaxedPart{0, fraction(1, 3)}, TaxedPart{1, fraction(1, 3)}});
  const Quote quote = quote_of_guests("100", {{"guests", 1, 1}}, terms);
  CHECK(quote.taxes[0].base == money("33.34"));
  CHECK(quote.taxes[1].base == money("33.33"));
}

TEST_CASE(
    "a minimum for a guest counts where the rule asks for less, and an agreed price keeps it") {
  QuoteTerms terms = at_cost_of_food();
  terms.minimum_price = money("60");
  CHECK(quote_of_guests("2000", {{"guests", 40, 1}}, terms).price == money("60"));
  CHECK(quote_of_guests("4000", {{"guests", 40, 1}}, terms).price == money("100"));
  terms.agreed_price = money("55");
  const Problem problem = problem_of([&] { quote_of_guests("2000", {{"guests", 40, 1}}, terms); });
  CHECK(problem.id == "agreed-below-minimum");
  CHECK(problem.found == "an agreed price of 55 and a minimum for a guest of 60, which is 5 more");
  terms.agreed_price = money("59.995");
  CHECK(problem_of([&] {
          quote_of_guests("2000", {{"guests", 40, 1}}, terms);
        }).found ==
        "an agreed price of 59.995 and a minimum for a guest of 60, which is 0.005 more");
}

TEST_CASE("discounts take no more than there is, and cut the margin") {
  QuoteTerms terms = at_cost_of_food();
  terms.discounts = {{"all of it", {}, money("5000"), {}}, {"and more", fraction(1, 2), {}, {}}};
  const Quote quote = quote_of_guests("2000", {{"guests", 40, 1}}, terms);
  CHECK(quote.price == money("50"));
  CHECK(quote.discounts[0].amount == money("2000"));
  CHECK(quote.discounts[1].amount == Money());
  CHECK(quote.subtotal == Money());
  CHECK(quote.margin == -money("2000"));
  CHECK(quote.margin_share == 0);
}

TEST_CASE("a share off is rounded down to the cent") {
  QuoteTerms terms = at_cost_of_food();
  terms.discounts = {{"a third", fraction(1, 3), {}, {}}};
  CHECK(quote_of_guests("100", {{"guests", 1, 1}}, terms).discounts[0].amount == money("33.33"));
}

TEST_CASE("guests whose own prices bring in all that is asked leave nothing for the others") {
  const Quote quote = quote_of_guests("100", {{"adults", 10, 1}, {"sponsors", 2, 1, money("80")}},
                                      at_cost_of_food());
  CHECK(quote.price == Money());
  CHECK(quote.subtotal == money("160"));
}

TEST_CASE("terms of a bill that can't be") {
  const auto id_of = [](auto&& change) {
    QuoteTerms terms = at_cost_of_food();
    change(terms);
    return problem_of([&] { quote_of_guests("100", {{"guests", 1, 1}}, terms); }).id;
  };
  CHECK(id_of([](QuoteTerms& terms) {
          terms.service = Charge{fraction(1, 10), false, true};
          terms.prices_include_tax = true;
        }) == "charge-after-tax-included");
  CHECK(id_of([](QuoteTerms& terms) {
          terms.conditions.deposit = Deposit{fraction(3, 5), {}, {}};
          terms.conditions.second_deposit = Deposit{fraction(3, 5), {}, {}};
        }) == "share-out-of-range");
  CHECK(id_of([](QuoteTerms& terms) {
          terms.price_taxed = Taxed({TaxedPart{0, 1}, TaxedPart{0, 1}});
        }) == "share-out-of-range");
  CHECK(id_of([](QuoteTerms& terms) {
          terms.discounts = {{"x", 2, {}, {}}};
        }) == "share-out-of-range");
}
