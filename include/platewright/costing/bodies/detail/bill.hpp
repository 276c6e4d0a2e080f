// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/detail/bill.hpp.

#include <algorithm>

#include "platewright/costing/detail/bill.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY Rational missing_guests(const std::vector<PayingGuests>& guests,
                                         const QuoteTerms& terms) {
  const auto& guaranteed = terms.conditions.guaranteed_guests;
  Rational paying;
  for (const PayingGuests& kind : guests) {
    if (pays(kind)) paying += kind.count;
  }
  return guaranteed && *guaranteed > paying ? *guaranteed - paying : Rational(0);
}

PLATEWRIGHT_BODY void add_missing(Quote& quote, const Rational& count) {
  if (count == 0) return;
  quote.missing = QuoteLine{{"guaranteed, not coming", count, 1}, quote.price, quote.price * count};
  quote.subtotal += quote.missing->amount;
}

PLATEWRIGHT_BODY std::vector<DiscountLine> discounts_off(const Quote& quote, const std::string& of,
                                                         const Money& base) {
  std::vector<DiscountLine> out;
  Money left = base;
  for (const Discount& discount : quote.terms.discounts) {
    if (discount.of != of) continue;
    const Money share =
        round_money(base * discount.share.value_or(0), minor_unit(quote.currency), Rounding::down);
    out.push_back({discount, base, std::min(discount.sum.value_or(share), left)});
    left -= out.back().amount;
  }
  return out;
}

PLATEWRIGHT_BODY Money sum_of(const std::vector<DiscountLine>& discounts) {
  Money out;
  for (const DiscountLine& line : discounts) out += line.amount;
  return out;
}

PLATEWRIGHT_BODY Money price_of_kind(const Quote& quote, const PayingGuests& kind) {
  if (kind.own_price) return *kind.own_price;
  if (kind.price_share == 1) return quote.price;
  return round_money(quote.price * kind.price_share, minor_unit(quote.currency), Rounding::up);
}

PLATEWRIGHT_BODY void add_lines(Quote& quote, const std::vector<PayingGuests>& guests) {
  for (const PayingGuests& kind : guests) {
    const Money price = price_of_kind(quote, kind);
    quote.lines.push_back({kind, price, price * kind.count});
    quote.subtotal += quote.lines.back().amount;
  }
  add_missing(quote, missing_guests(guests, quote.terms));
  check_positive("what the guests pay", quote.subtotal);
  quote.discounts = discounts_off(quote, {}, quote.subtotal);
  quote.subtotal -= sum_of(quote.discounts);
  if (quote.terms.minimum_charge && quote.subtotal < *quote.terms.minimum_charge) {
    quote.minimum_raise = *quote.terms.minimum_charge - quote.subtotal;
    quote.subtotal = *quote.terms.minimum_charge;
  }
}

PLATEWRIGHT_BODY void add_charges(Quote& quote) {
  const QuoteTerms& terms = quote.terms;
  const Money minor = minor_unit(quote.currency);
  const auto share_of = [&](const Money& sum, const Rational& share) {
    return round_money(sum * share, minor, Rounding::half_up);
  };
  TaxBases bases(terms, minor);
  bases.add(quote.subtotal, terms.price_taxed);
  for (const BilledExtra& extra : quote.billed) bases.add(extra.left, extra.cost.line.taxed);
  if (terms.service && !terms.service->after_tax) {
    quote.service = share_of(quote.subtotal, terms.service->share);
    bases.add(quote.service, terms.service->taxed);
  }
  if (terms.gratuity) {
    quote.gratuity = share_of(quote.subtotal, terms.gratuity->share);
    bases.add(quote.gratuity, terms.gratuity->taxed);
  }
  quote.taxes = bases.lines();
  for (const TaxLine& line : quote.taxes) {
    quote.taxed += line.base;
    quote.tax += line.tax;
  }
  if (terms.service && terms.service->after_tax) {
    quote.service = share_of(quote.subtotal + quote.tax, terms.service->share);
  }
  quote.total = quote.subtotal + quote.billed_total + quote.service + quote.gratuity;
  if (!terms.prices_include_tax) quote.total += quote.tax;
}

PLATEWRIGHT_BODY Money deposit_of(const std::optional<Deposit>& deposit, const Quote& quote) {
  if (!deposit) return Money();
  const Money share = round_money(quote.total * deposit->share.value_or(0),
                                  minor_unit(quote.currency), Rounding::half_up);
  return std::min(deposit->sum.value_or(share), quote.total - quote.deposit);
}

PLATEWRIGHT_BODY void add_payments(Quote& quote) {
  const Conditions& conditions = quote.terms.conditions;
  quote.deposit = deposit_of(conditions.deposit, quote);
  quote.second_deposit = deposit_of(conditions.second_deposit, quote);
  quote.balance = quote.total - quote.deposit - quote.second_deposit;
  for (const Payment& payment : conditions.payments) quote.received += payment.sum;
  quote.due = quote.total - quote.received;
}

}  // namespace platewright::detail
