// SPDX-License-Identifier: MIT
// What holds for any quote.

#include <rapidcheck.h>

#include "platewright/card/quote_sheet.hpp"
#include "platewright/card/writers.hpp"
#include "platewright/event/break_even.hpp"
#include "platewright/event/margin_warnings.hpp"
#include "support/catch.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Rational share_below(std::int64_t most) {
  return fraction(*rc::gen::inRange<std::int64_t>(0, most), 1000);
}
Money sum_of_money() {
  return money(fraction(*rc::gen::inRange<std::int64_t>(1, 10000000), 100));
}

std::vector<PayingGuests> random_guests() {
  return {{"adults", *rc::gen::inRange<std::int64_t>(1, 500), 1},
          {"children", *rc::gen::inRange<std::int64_t>(0, 100), share_below(1001)},
          {"crew", *rc::gen::inRange<std::int64_t>(0, 20), 0}};
}

QuoteTerms random_terms() {
  QuoteTerms out;
  out.q_factor = share_below(100);
  out.labour = {{"staff", *rc::gen::inRange<std::int64_t>(0, 20),
                 Duration::of(*rc::gen::inRange<std::int64_t>(0, 900), units::minute),
                 sum_of_money() / Duration::of(100, units::hour)}};
  out.extras = {{"van", sum_of_money(), false}, {"linen", money("1.25"), true}};
  out.overhead = share_below(400);
  out.rule = *rc::gen::element(PricingRule::margin, PricingRule::mark_up, PricingRule::food_cost);
  out.rule_share = share_below(999) + fraction(1, 1000);
  if (*rc::gen::arbitrary<bool>()) {
    out.round_up_to = *rc::gen::element(money("0.05"), money("0.50"), money("1"), money("2.50"));
  }
  if (*rc::gen::arbitrary<bool>()) {
    out.service = Charge{share_below(300), *rc::gen::arbitrary<bool>()};
  }
  out.tax = share_below(250);
  return out;
}

/// Every term that there is.
QuoteTerms all_terms() {
  QuoteTerms out = random_terms();
  out.labour.push_back({"server", 1, Duration::of(5, units::hour),
                        money("21.50") / Duration::of(1, units::hour), share_below(400),
                        *rc::gen::inRange<std::int64_t>(1, 60)});
  ExtraLine tent{"tent", sum_of_money(), false, true, *rc::gen::arbitrary<bool>()};
  out.extras.push_back(tent);
  out.overhead_of_event = sum_of_money();
  out.contingency = share_below(200);
  out.price_steps = {{50, share_below(100)}, {200, share_below(200)}};
  out.minimum_charge = sum_of_money();
  out.gratuity = Charge{share_below(200), *rc::gen::arbitrary<bool>()};
  out.price_taxed = *rc::gen::arbitrary<bool>();
  out.conditions.deposit = Deposit{share_below(1001), {}, {}};
  if (out.service && !out.service->taxed) out.service->after_tax = *rc::gen::arbitrary<bool>();
  return out;
}

}  // namespace

TEST_CASE("with every term there is, costs, bill, deposit and balance add up") {
  CHECK(rc::check([] {
    const Quote quote = make_quote(sum_of_money(), random_guests(), all_terms(), Currency("USD"));
    RC_ASSERT(quote.food + quote.q_factor + quote.labour_total + quote.extras_total +
                  quote.overhead + quote.contingency ==
              quote.cost);
    Money lines = quote.minimum_raise;
    for (const QuoteLine& line : quote.lines) lines += line.amount;
    RC_ASSERT(lines == quote.subtotal);
    RC_ASSERT(quote.subtotal >= *quote.terms.minimum_charge);
    RC_ASSERT(quote.subtotal + quote.billed_total + quote.service + quote.gratuity + quote.tax ==
              quote.total);
    RC_ASSERT(quote.deposit + quote.balance == quote.total);
    for (const Money& sum : {quote.billed_total, quote.gratuity, quote.deposit, quote.total}) {
      RC_ASSERT(is_whole(amount_of(sum) * 100));
    }
  }));
}

TEST_CASE("one worker fewer would have too many guests") {
  CHECK(rc::check([] {
    const Quote quote = make_quote(sum_of_money(), random_guests(), all_terms(), Currency("USD"));
    const LabourCost& server = quote.labour.back();
    const Rational each = *server.line.guests_per_worker;
    RC_ASSERT(server.workers * each >= quote.guests);
    RC_ASSERT((server.workers - 1) * each < quote.guests);
  }));
}

TEST_CASE("the parts of a quote add up") {
  CHECK(rc::check([] {
    const Quote quote =
        make_quote(sum_of_money(), random_guests(), random_terms(), Currency("USD"));
    RC_ASSERT(quote.food + quote.q_factor + quote.labour_total + quote.extras_total +
                  quote.overhead ==
              quote.cost);
    Money lines;
    for (const QuoteLine& line : quote.lines) lines += line.amount;
    RC_ASSERT(lines == quote.subtotal);
    RC_ASSERT(quote.subtotal + quote.service + quote.tax == quote.total);
    RC_ASSERT(quote.cost + quote.margin == quote.subtotal);
  }));
}

TEST_CASE("everything that is paid is a whole number of minor units") {
  CHECK(rc::check([] {
    const Quote quote =
        make_quote(sum_of_money(), random_guests(), random_terms(), Currency("USD"));
    const auto payable = [](const Money& sum) { return is_whole(amount_of(sum) * 100); };
    for (const QuoteLine& line : quote.lines) RC_ASSERT(payable(line.price));
    RC_ASSERT(payable(quote.subtotal));
    RC_ASSERT(payable(quote.service));
    RC_ASSERT(payable(quote.tax));
    RC_ASSERT(payable(quote.total));
  }));
}

TEST_CASE("the price is rounded up by less than a step") {
  CHECK(rc::check([] {
    const Quote quote =
        make_quote(sum_of_money(), random_guests(), random_terms(), Currency("USD"));
    const Money step = quote.terms.round_up_to.value_or(money("0.01"));
    RC_ASSERT(is_whole(quote.price / step));
    RC_ASSERT(quote.price >= quote.exact_price);
    RC_ASSERT(quote.price - step < quote.exact_price);
  }));
}

TEST_CASE("a price from a margin has that margin, and likewise for the other rules") {
  CHECK(rc::check([] {
    const Quote quote =
        make_quote(sum_of_money(), random_guests(), random_terms(), Currency("USD"));
    const Money exact = quote.exact_price * quote.full_prices;
    switch (quote.terms.rule) {
      case PricingRule::margin:
        RC_ASSERT((exact - quote.cost) / exact == quote.terms.rule_share);
        break;
      case PricingRule::mark_up:
        RC_ASSERT((exact - quote.cost) / quote.cost == quote.terms.rule_share);
        break;
      case PricingRule::food_cost:
        RC_ASSERT((quote.food + quote.q_factor) / exact == quote.terms.rule_share);
        break;
    }
  }));
}

TEST_CASE("a margin m and a mark-up m / (1 - m) ask the same price") {
  CHECK(rc::check([] {
    QuoteTerms terms = random_terms();
    const Money food = sum_of_money();
    const auto guests = random_guests();
    terms.rule = PricingRule::margin;
    const Quote margin = make_quote(food, guests, terms, Currency("USD"));
    terms.rule = PricingRule::mark_up;
    terms.rule_share = terms.rule_share / (1 - terms.rule_share);
    RC_ASSERT(make_quote(food, guests, terms, Currency("USD")).exact_price == margin.exact_price);
  }));
}

TEST_CASE("at the break-even number what the guests pay covers the cost, and one fewer does not") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = random_kitchen();
    Occasion occasion{random_event(), kitchen.book, kitchen.prices};
    occasion.event.guests[0].count = *rc::gen::inRange<std::int64_t>(2, 60);
    occasion.event.terms = random_terms();
    const Money price = quote_of(occasion).price;
    const std::optional<BreakEven> even = break_even(occasion);
    occasion.event.terms.agreed_price = price;
    const auto margin_at = [&](const Rational& guests) {
      Occasion other = occasion;
      change_guests(other.event, guests);
      return quote_of(other).margin;
    };
    if (!even) {
      RC_ASSERT(quote_of(occasion).margin < Money{});
      return;
    }
    RC_ASSERT(even->is_fewest);
    const Rational fewest(even->guests);
    RC_ASSERT(margin_at(fewest) >= Money{});
    if (fewest > 1) RC_ASSERT(margin_at(fewest - 1) < Money{});
    // As walking guest by guest would find it.
    for (Rational guests = fewest; guests <= guest_count(occasion.event); guests += 1) {
      RC_ASSERT(margin_at(guests) >= Money{});
    }
  }));
}

TEST_CASE("what guaranteed guests pay is never less for fewer of them") {
  CHECK(rc::check([] {
    QuoteTerms terms = random_terms();
    terms.agreed_price = sum_of_money() + money("0.01");
    terms.conditions.guaranteed_guests = *rc::gen::inRange<std::int64_t>(1, 100);
    const Rational heads = *rc::gen::inRange<std::int64_t>(1, 120);
    const Money food = sum_of_money();
    const Quote quote = make_quote(food, {{"adults", heads, 1}}, terms, Currency("USD"));
    const Rational paid = std::max(heads, *terms.conditions.guaranteed_guests);
    RC_ASSERT(quote.subtotal - quote.minimum_raise == *terms.agreed_price * paid);
  }));
}

TEST_CASE("a price is divided among all who pay, be they there or not") {
  CHECK(rc::check([] {
    QuoteTerms terms = random_terms();
    RC_PRE(terms.rule == PricingRule::margin);
    terms.conditions.guaranteed_guests = *rc::gen::inRange<std::int64_t>(1, 700);
    const Quote quote = make_quote(sum_of_money(), random_guests(), terms, Currency("USD"));
    RC_CLASSIFY(quote.missing.has_value());
    const Money step = terms.round_up_to.value_or(money("0.01"));
    const Money asked = quote.cost / Rational(1 - terms.rule_share);
    RC_ASSERT(quote.subtotal >= asked);
    RC_ASSERT(quote.subtotal < asked + step * quote.full_prices + money("0.01") * quote.guests);
  }));
}

TEST_CASE("the cost of an event, its inverse and its slope agree exactly") {
  CHECK(rc::check([] {
    const Money food = sum_of_money();
    const Quote quote = make_quote(food, random_guests(), all_terms(), Currency("USD"));
    const CostOfFood cost = cost_of_food(quote);
    RC_ASSERT(cost.parts(food).cost == quote.cost);
    RC_ASSERT(quote.food + quote.q_factor + quote.labour_total + quote.extras_total +
                  quote.overhead + quote.contingency ==
              quote.cost);
    RC_ASSERT(cost.food_for(quote.cost) == food);
    const Money more = sum_of_money();
    RC_ASSERT(cost.parts(food + more).cost - quote.cost == more * cost.slope());
  }));
}

TEST_CASE("a price by margin or mark-up that is neither agreed nor stepped leaves what is asked") {
  CHECK(rc::check([] {
    QuoteTerms terms = random_terms();
    RC_PRE(terms.rule != PricingRule::food_cost);
    const Quote quote = make_quote(sum_of_money(), random_guests(), terms, Currency("USD"));
    RC_ASSERT(quote.subtotal >= quote.target);
    RC_ASSERT_FALSE(margin_notice(quote));
  }));
}

TEST_CASE("the prices that a quote below its margin names cover the cost and keep the rule") {
  CHECK(rc::check([] {
    const Money food = sum_of_money();
    const auto guests = random_guests();
    QuoteTerms terms = *rc::gen::arbitrary<bool>() ? random_terms() : all_terms();
    terms.minimum_charge.reset();
    if (*rc::gen::arbitrary<bool>()) terms.agreed_price = sum_of_money();
    const Quote quote = make_quote(food, guests, terms, Currency("USD"));
    const auto notice = margin_notice(quote);
    RC_CLASSIFY(notice.has_value());
    const auto lacks = [&](const Money& wanted) {
      return wanted - quote.subtotal >= money("0.01");
    };
    RC_ASSERT(notice.has_value() == (lacks(quote.cost) || lacks(quote.target)));
    if (!notice) return;
    RC_ASSERT((notice->fault == MarginFault::loss) == lacks(quote.cost));
    const auto at_price = [&](const Money& price) {
      terms.agreed_price = price;
      return make_quote(food, guests, terms, Currency("USD"));
    };
    RC_ASSERT(at_price(*notice->covering_price).margin >= Money());
    RC_ASSERT_FALSE(margin_notice(at_price(*notice->asked_price)));
  }));
}

TEST_CASE("an event is warned of a margin where the sheet of its quote has the box, or neither") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = random_kitchen();
    Event event = random_event();
    event.has_terms = true;
    event.terms.rule_share = share_below(900);
    if (*rc::gen::arbitrary<bool>()) event.terms.agreed_price = sum_of_money() / Rational(1000);
    if (*rc::gen::arbitrary<bool>()) event.terms.price_steps = {{50, share_below(300)}};
    const EventPlan plan({event, kitchen.book, kitchen.prices});
    const std::string sheet = write_text(quote_sheet(event, plan.quote(), std::nullopt));
    const bool boxed = sheet.find("SOLD AT A LOSS") != std::string::npos ||
                       sheet.find("BELOW THE MARGIN ASKED FOR") != std::string::npos;
    RC_CLASSIFY(boxed);
    const ProblemList warned = margin_warnings(plan);
    RC_ASSERT(boxed == !warned.all().empty());
  }));
}
