#pragma once
// Works a quote out.

#include <vector>

#include "platewright/costing/detail/quote_checks.hpp"
#include "platewright/costing/quote.hpp"
#include "platewright/costing/round_money.hpp"

namespace platewright {

namespace detail {

inline void add_costs(Quote& quote) {
  const QuoteTerms& terms = quote.terms;
  quote.q_factor = quote.food * terms.q_factor;
  for (const LabourLine& line : terms.labour) {
    const Duration time = line.time * line.workers;
    quote.labour.push_back({line, time, line.rate * time});
    quote.labour_total += quote.labour.back().cost;
  }
  for (const ExtraLine& line : terms.extras) {
    const Rational count = line.per_guest ? quote.guests : Rational(1);
    quote.extras.push_back({line, count, line.price * count});
    quote.extras_total += quote.extras.back().cost;
  }
  const Money direct = quote.food + quote.q_factor + quote.labour_total + quote.extras_total;
  quote.overhead = direct * terms.overhead;
  quote.cost = direct + quote.overhead;
}

/// A margin is a share of the price, a mark-up a share of the cost, a food-cost share the food's
/// share of the price.
inline Money target_of(const Quote& quote) {
  const Rational& share = quote.terms.rule_share;
  switch (quote.terms.rule) {
    case PricingRule::mark_up:
      return quote.cost * (1 + share);
    case PricingRule::food_cost:
      return (quote.food + quote.q_factor) / share;
    case PricingRule::margin:
      break;
  }
  return quote.cost / Rational(1 - share);
}

inline void add_prices(Quote& quote, const std::vector<PayingGuests>& guests) {
  const Money minor = minor_unit(quote.minor_digits);
  quote.target = target_of(quote);
  quote.exact_price = quote.target / quote.full_prices;
  quote.price =
      round_money(quote.exact_price, quote.terms.round_up_to.value_or(minor), Rounding::up);
  for (const PayingGuests& kind : guests) {
    const Money price = kind.price_share == 1
                            ? quote.price
                            : round_money(quote.price * kind.price_share, minor, Rounding::half_up);
    quote.lines.push_back({kind, price, price * kind.count});
    quote.subtotal += quote.lines.back().amount;
  }
}

inline void add_charges(Quote& quote) {
  const Money minor = minor_unit(quote.minor_digits);
  quote.taxed = quote.subtotal;
  if (quote.terms.service) {
    quote.service =
        round_money(quote.subtotal * quote.terms.service->share, minor, Rounding::half_up);
    if (quote.terms.service->taxed) quote.taxed += quote.service;
  }
  quote.tax = round_money(quote.taxed * quote.terms.tax, minor, Rounding::half_up);
  quote.total = quote.subtotal + quote.service + quote.tax;
}

/// Heads at which what they pay reaches what they cost: fixed cost / (payment - cost of a guest).
inline std::optional<Integer> break_even_of(const Quote& quote) {
  Money of_guests = quote.food + quote.q_factor;
  for (const ExtraCost& extra : quote.extras) {
    if (extra.line.per_guest) of_guests += extra.cost;
  }
  of_guests = of_guests * (1 + quote.terms.overhead);
  const Money earned = (quote.subtotal - of_guests) / quote.guests;
  if (earned <= Money{}) return std::nullopt;
  return ceiling_of((quote.cost - of_guests) / earned);
}

inline void add_outcome(Quote& quote) {
  quote.margin = quote.subtotal - quote.cost;
  quote.margin_share = quote.margin / quote.subtotal;
  quote.mark_up_share = quote.margin / quote.cost;
  quote.food_share = (quote.food + quote.q_factor) / quote.subtotal;
  quote.break_even = break_even_of(quote);
}

}  // namespace detail

/// The quote for `food` (the plate costs of all dishes) and these guests, in a currency with so
/// many decimals. cost = (food x (1 + Q) + labour + extras) x (1 + overhead); the price of a guest
/// is rounded up to its step, or to the minor unit where there is none. Service charge and tax are
/// not the caterer's income here: margin, food cost and break-even look at the subtotal. Throws
/// Failure for shares outside their range (a margin of 100 % or more, a food-cost share of 0, a tax
/// above 100 %), a cost of 0 or less, a price step of 0 or less, figures below 0, and for no guest
/// who pays.
inline Quote make_quote(const Money& food, const std::vector<PayingGuests>& guests,
                        const QuoteTerms& terms, unsigned minor_digits = 2) {
  detail::check_terms(terms);
  detail::check_guests(guests);
  detail::check_not_negative("a cost of the food", food);
  Quote quote;
  quote.terms = terms;
  quote.minor_digits = minor_digits;
  quote.food = food;
  for (const PayingGuests& kind : guests) {
    quote.guests += kind.count;
    quote.full_prices += kind.count * kind.price_share;
  }
  detail::add_costs(quote);
  detail::check_positive("a cost", quote.cost);
  if (terms.rule == PricingRule::food_cost) detail::check_positive("a cost of the food", food);
  detail::add_prices(quote, guests);
  // A guest kind's price may come to nothing at the minor unit, which no other check can see.
  detail::check_positive("a subtotal", quote.subtotal);
  detail::add_charges(quote);
  detail::add_outcome(quote);
  return quote;
}

}  // namespace platewright
