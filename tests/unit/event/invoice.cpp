// SPDX-License-Identifier: MIT
// The bill after an event, at the price that was quoted.

#include "platewright/event/invoice.hpp"

#include "platewright/event/payment_warnings.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

EventPlan plan_with_invoice(const Rational& came) {
  const TestKitchen kitchen = supper_kitchen();
  Event event = supper();
  event.terms.rule_share = fraction(3, 10);
  event.terms.conditions.guaranteed_guests = guest_count(event) - 4;
  event.invoice = InvoiceTerms{"7", LocalDay{}, {}, {}, std::nullopt};
  event.invoice->came[event.guests.front().name] = came;
  ExtraLine cider{"cider", money("9.50"), false, true, true, 12};
  event.invoice->extras = {cider};
  return EventPlan({event, kitchen.book, kitchen.prices});
}

}  // namespace

TEST_CASE("an invoice bills who came at the price quoted, with what came on top") {
  const Rational expected = supper().guests.front().count;
  const EventPlan plan = plan_with_invoice(expected - 2);
  const Invoice invoice = make_invoice(plan);
  CHECK(invoice.billed.price == invoice.quoted.price);
  CHECK(invoice.billed.lines.front().guests.count == expected - 2);
  CHECK(invoice.billed.lines.front().amount == invoice.quoted.price * Rational(expected - 2));
  CHECK(invoice.billed.billed_total == money("114"));
  CHECK(invoice.quoted.billed_total == Money());
}

TEST_CASE("who was guaranteed and did not come is on the invoice") {
  const Rational expected = supper().guests.front().count;
  const Invoice invoice = make_invoice(plan_with_invoice(expected - 10));
  REQUIRE(invoice.billed.missing);
  const Quote& billed = invoice.billed;
  Rational paying;
  for (const QuoteLine& line : billed.lines) {
    if (pays(line.guests)) paying += line.guests.count;
  }
  CHECK(billed.missing->guests.count + paying == *billed.terms.conditions.guaranteed_guests);
}

TEST_CASE("more received than the bill comes to is warned of, the invoice's where there is one") {
  const EventPlan plan = plan_with_invoice(supper().guests.front().count);
  Occasion occasion = plan.occasion();
  occasion.event.has_terms = true;
  auto& payments = occasion.event.terms.conditions.payments;
  const auto warned = [&] {
    const ProblemList found = payment_warnings(EventPlan(occasion));
    return found.all();
  };
  CHECK(warned().empty());
  // What came on top is on the invoice, and may have been paid for.
  const Invoice invoice = make_invoice(plan);
  payments = {{LocalDay{}, invoice.billed.total, {}}};
  CHECK(invoice.quoted.total < invoice.billed.total);
  CHECK(warned().empty());
  payments.push_back({LocalDay{}, money("0.01"), {}});
  REQUIRE(warned().size() == 1);
  CHECK(warned().front().id == "paid-too-much");
  CHECK(warned().front().remedy.substr(0, 17) == "pay 0.01 USD back");
  payments.pop_back();
  occasion.event.invoice.reset();
  CHECK(warned().size() == 1);
}

TEST_CASE("an event without an invoice has none yet") {
  const TestKitchen kitchen = supper_kitchen();
  const EventPlan plan({supper(), kitchen.book, kitchen.prices});
  CHECK(problem_of([&] { make_invoice(plan); }).id == "invoice-missing");
}
