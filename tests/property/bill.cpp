// SPDX-License-Identifier: MIT
// What holds for any bill: taxes in or on top of the prices, discounts, prices by kind, payers.

#include <rapidcheck.h>

#include "platewright/costing/divide_bill.hpp"
#include "platewright/costing/make_quote.hpp"
#include "platewright/costing/margin_notice.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Rational share_to(std::int64_t thousandths) {
  return fraction(*rc::gen::inRange<std::int64_t>(0, thousandths + 1), 1000);
}
Money cents(std::int64_t most) {
  return money(fraction(*rc::gen::inRange<std::int64_t>(1, most), 100));
}
bool coin() {
  return *rc::gen::arbitrary<bool>();
}

/// At one of two rates, at both in part, or not at all.
Taxed any_taxed() {
  switch (*rc::gen::inRange(0, 4)) {
    case 0:
      return false;
    case 1:
      return true;
    case 2:
      return Taxed({TaxedPart{1, 1}});
    default:
      break;
  }
  const Rational first = share_to(1000);
  return Taxed({TaxedPart{0, first}, TaxedPart{1, (1 - first) * share_to(1000)}});
}

std::vector<PayingGuests> any_guests() {
  std::vector<PayingGuests> out{
      {"adults", *rc::gen::inRange<std::int64_t>(1, 500), 1},
      {"children", *rc::gen::inRange<std::int64_t>(0, 100), share_to(900)},
      {"band", *rc::gen::inRange<std::int64_t>(0, 20), 1}};
  if (coin()) out[1].own_price = cents(5000);
  if (coin()) out[2].own_price = cents(3000);
  if (coin()) out[1].payer = "the parents";
  if (coin()) out[2].payer = "the agency";
  return out;
}

void add_discounts(QuoteTerms& terms) {
  if (coin()) terms.discounts.push_back({"returning", share_to(300), {}, {}});
  if (coin()) terms.discounts.push_back({"early", share_to(300), {}, {}});
  if (coin()) terms.discounts.push_back({"goodwill", {}, cents(20000), {}});
  if (coin()) terms.discounts.push_back({"off the tent", share_to(1000), {}, "tent"});
  if (coin()) terms.discounts.push_back({"off the tent too", {}, cents(90000), "tent"});
}

/// Every term that changes a bill.
QuoteTerms any_terms() {
  QuoteTerms out;
  out.rule = *rc::gen::element(PricingRule::margin, PricingRule::mark_up);
  out.rule_share = share_to(900);
  out.tax = TaxRates({TaxRate{"food", share_to(250)}, TaxRate{"service", share_to(250)}});
  out.price_taxed = any_taxed();
  out.prices_include_tax = coin();
  out.overhead = share_to(300);
  ExtraLine tent{"tent", cents(90000), false, true, any_taxed()};
  ExtraLine tables{"tables", cents(2000), false, true, any_taxed(), 8};
  out.extras = {{"van", cents(9000)}, tent, tables};
  if (coin()) out.service = Charge{share_to(250), any_taxed()};
  if (coin()) out.gratuity = Charge{share_to(100), any_taxed()};
  if (coin()) out.round_up_to = *rc::gen::element(money("0.05"), money("0.50"), money("2.50"));
  if (coin()) out.minimum_price = cents(9000);
  if (coin()) out.price_steps = {{50, share_to(100)}};
  if (coin()) out.conditions.guaranteed_guests = *rc::gen::inRange<std::int64_t>(1, 700);
  add_discounts(out);
  return out;
}

Quote any_quote(const QuoteTerms& terms) {
  return make_quote(cents(1000000), any_guests(), terms, Currency("USD"));
}

}  // namespace

TEST_CASE("the lines of any bill sum to its total to the cent, and so do its taxed parts") {
  CHECK(rc::check([] {
    QuoteTerms terms = any_terms();
    if (coin()) terms.minimum_charge = cents(2000000);
    const Quote quote = any_quote(terms);
    Money lines = quote.minimum_raise;
    for (const QuoteLine& line : quote.lines) lines += line.amount;
    if (quote.missing) lines += quote.missing->amount;
    for (const DiscountLine& line : quote.discounts) lines -= line.amount;
    RC_ASSERT(lines == quote.subtotal);
    Money billed;
    for (const BilledExtra& extra : quote.billed) {
      billed += extra.cost.cost;
      for (const DiscountLine& line : extra.discounts) billed -= line.amount;
      RC_ASSERT(extra.left >= Money());
    }
    RC_ASSERT(billed == quote.billed_total);
    Money taxed;
    Money tax;
    for (const TaxLine& line : quote.taxes) {
      taxed += line.base;
      tax += line.tax;
      RC_ASSERT(is_whole(amount_of(line.base) * 100));
      RC_ASSERT(is_whole(amount_of(line.tax) * 100));
    }
    RC_ASSERT(taxed == quote.taxed);
    RC_ASSERT(tax == quote.tax);
    const Money before_tax = quote.subtotal + billed + quote.service + quote.gratuity;
    RC_ASSERT(quote.taxed <= before_tax);
    RC_ASSERT(quote.total == (terms.prices_include_tax ? before_tax : before_tax + tax));
  }));
}

TEST_CASE("price from margin and margin from price are inverse with every term") {
  CHECK(rc::check([] {
    const Quote quote = any_quote(any_terms());
    const IncomeOfPrice income = IncomeOfPrice::with_discounts(quote);
    const Money price = cents(50000) + money("300");
    // Sums off may take it all from very few guests; then it is flat.
    RC_PRE(income.subtotal(price) > Money());
    const auto back = income.price_for(income.income(price));
    if (!back) {
      RC_ASSERT(quote.full_prices == 0);
      return;
    }
    RC_ASSERT(*back == price);
    // By margin: price -> margin -> cost / (1 - margin) -> price.
    const Rational margin = (income.income(price) - quote.cost) / income.income(price);
    if (margin < 1) RC_ASSERT(*income.price_for(quote.cost / Rational(1 - margin)) == price);
  }));
}

TEST_CASE("an exact price without discounts or steps leaves the margin that it was asked for") {
  CHECK(rc::check([] {
    QuoteTerms terms = any_terms();
    terms.discounts.clear();
    terms.price_steps.clear();
    terms.rule = PricingRule::margin;
    const Quote quote = any_quote(terms);
    RC_PRE(quote.exact_price > Money());
    const Money income = IncomeOfPrice(quote).income(quote.exact_price);
    RC_ASSERT((income - quote.cost) / income == terms.rule_share);
    RC_ASSERT(quote.income >= quote.target);
    RC_ASSERT_FALSE(margin_notice(quote));
  }));
}

TEST_CASE("the prices that a quote with anything off names cover the cost and keep the rule") {
  CHECK(rc::check([] {
    const Money food = cents(1000000);
    const auto guests = any_guests();
    QuoteTerms terms = any_terms();
    terms.minimum_price.reset();
    if (coin()) terms.agreed_price = cents(9000);
    const Quote quote = make_quote(food, guests, terms, Currency("USD"));
    const auto notice = margin_notice(quote);
    RC_CLASSIFY(notice.has_value());
    if (!notice) return;
    const auto at_price = [&](const Money& price) {
      terms.agreed_price = price;
      return make_quote(food, guests, terms, Currency("USD"));
    };
    RC_ASSERT(at_price(*notice->covering_price).margin >= Money());
    RC_ASSERT_FALSE(margin_notice(at_price(*notice->asked_price)));
  }));
}

TEST_CASE("tax in a price is what the same price without it would have on top, to the cent") {
  CHECK(rc::check([] {
    QuoteTerms terms;
    terms.agreed_price = cents(20000);
    terms.tax = share_to(300);
    terms.prices_include_tax = true;
    const std::vector<PayingGuests> guests{{"guests", *rc::gen::inRange<std::int64_t>(1, 300), 1}};
    const Quote gross = make_quote(money("100"), guests, terms, Currency("USD"));
    RC_ASSERT(gross.total == gross.subtotal);
    const Money net = gross.total - gross.tax;
    const Money on_top = net * terms.tax[0].share;
    // Half a cent off the tax moves the net sum by half a cent, and that its tax by less.
    RC_ASSERT(on_top - gross.tax < money("0.01"));
    RC_ASSERT(gross.tax - on_top < money("0.01"));
  }));
}

TEST_CASE("what several payers pay sums to the total, each within a cent of its own") {
  CHECK(rc::check([] {
    const Quote quote = any_quote(any_terms());
    const std::vector<PayerShare> payers = divide_bill(quote);
    RC_CLASSIFY(payers.size() > 1);
    Money shares;
    for (const PayerShare& payer : payers) {
      shares += payer.share;
      RC_ASSERT(is_whole(amount_of(payer.share) * 100));
    }
    RC_ASSERT(shares == quote.total);
  }));
}

TEST_CASE("deposits, what was received and what is due add up to the total") {
  CHECK(rc::check([] {
    QuoteTerms terms = any_terms();
    terms.conditions.deposit = Deposit{share_to(500), {}, {}};
    terms.conditions.second_deposit =
        coin() ? Deposit{share_to(500), {}, {}} : Deposit{{}, cents(500000), {}};
    const LocalDay day{std::chrono::days(20000)};
    terms.conditions.payments = {{day, cents(100000)}, {day, cents(100000)}};
    const Quote quote = any_quote(terms);
    RC_ASSERT(quote.deposit + quote.second_deposit + quote.balance == quote.total);
    RC_ASSERT(quote.balance >= Money());
    RC_ASSERT(quote.received + quote.due == quote.total);
  }));
}
