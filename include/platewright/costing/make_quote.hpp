#pragma once
// Works a quote out.

#include <vector>

#include "platewright/costing/cost_of_food.hpp"
#include "platewright/costing/plate_price.hpp"
#include "platewright/costing/quote.hpp"
#include "platewright/costing/quote_checks.hpp"
#include "platewright/costing/round_money.hpp"

namespace platewright {

/// How the cost of this quote's event follows from that of its food.
inline CostOfFood cost_of_food(const Quote& quote) {
  return {quote.terms, quote.labour_total + quote.extras_total};
}

namespace detail {

inline Rational workers_for(const LabourLine& line, const Rational& guests) {
  return line.guests_per_worker ? up_to(guests / *line.guests_per_worker, 1) : line.workers;
}

inline void add_extras(Quote& quote) {
  const Money minor = minor_unit(quote.currency);
  for (const ExtraLine& line : quote.terms.extras) {
    const Rational count = line.per_guest ? quote.guests : Rational(1);
    const Money cost = line.price * count;
    if (line.billed) {
      quote.billed.push_back({line, count, round_money(cost, minor, Rounding::half_up)});
      quote.billed_total += quote.billed.back().cost;
    } else {
      quote.extras.push_back({line, count, cost});
      quote.extras_total += cost;
    }
  }
}

inline void add_costs(Quote& quote) {
  const QuoteTerms& terms = quote.terms;
  for (const LabourLine& line : terms.labour) {
    const Rational workers = workers_for(line, quote.guests);
    const Duration time = line.time * workers;
    const PricePerTime rate = line.rate * Rational(1 + line.benefits);
    quote.labour.push_back({line, workers, time, rate * time});
    quote.labour_total += quote.labour.back().cost;
  }
  add_extras(quote);
  const EventCostParts parts = cost_of_food(quote).parts(quote.food);
  quote.q_factor = parts.q_factor;
  quote.overhead = parts.overhead;
  quote.contingency = parts.contingency;
  quote.cost = parts.cost;
}

/// What is off at this number of guests; nothing below the first step.
inline Rational step_off(const QuoteTerms& terms, const Rational& guests) {
  const PriceStep* reached = nullptr;
  for (const PriceStep& step : terms.price_steps) {
    if (guests >= step.from && (reached == nullptr || step.from > reached->from)) reached = &step;
  }
  return reached == nullptr ? Rational(0) : reached->off;
}

/// A margin is a share of the price, a mark-up a share of the cost, a food-cost share the food's
/// share of the price.
inline Money target_of(const Quote& quote) {
  const Rational& share = quote.terms.rule_share;
  switch (quote.terms.rule) {
    case PricingRule::mark_up:
      return quote.cost * (1 + share);
    case PricingRule::food_cost:
      return price_at_food_cost(quote.food + quote.q_factor, share);
    case PricingRule::margin:
      break;
  }
  return quote.cost / Rational(1 - share);
}

/// How many were guaranteed and do not come, of those who pay at all.
inline Rational missing_guests(const std::vector<PayingGuests>& guests, const QuoteTerms& terms) {
  const auto& guaranteed = terms.conditions.guaranteed_guests;
  Rational paying;
  for (const PayingGuests& kind : guests) {
    if (kind.price_share > 0) paying += kind.count;
  }
  return guaranteed && *guaranteed > paying ? *guaranteed - paying : Rational(0);
}

/// One line for all of them.
inline void add_missing(Quote& quote, const Rational& count) {
  if (count == 0) return;
  quote.missing = QuoteLine{{"guaranteed, not coming", count, 1}, quote.price, quote.price * count};
  quote.subtotal += quote.missing->amount;
}

inline void add_lines(Quote& quote, const std::vector<PayingGuests>& guests) {
  for (const PayingGuests& kind : guests) {
    const Money price =
        kind.price_share == 1
            ? quote.price
            : round_money(quote.price * kind.price_share, minor_unit(quote.currency), Rounding::up);
    quote.lines.push_back({kind, price, price * kind.count});
    quote.subtotal += quote.lines.back().amount;
  }
  add_missing(quote, missing_guests(guests, quote.terms));
  if (quote.terms.minimum_charge && quote.subtotal < *quote.terms.minimum_charge) {
    quote.minimum_raise = *quote.terms.minimum_charge - quote.subtotal;
    quote.subtotal = *quote.terms.minimum_charge;
  }
}

inline void add_price(Quote& quote) {
  const QuoteTerms& terms = quote.terms;
  quote.target = target_of(quote);
  quote.step_off = step_off(terms, quote.guests);
  quote.exact_price = quote.target / quote.full_prices * Rational(1 - quote.step_off);
  const Money step = terms.round_up_to.value_or(minor_unit(quote.currency));
  quote.price = terms.agreed_price.value_or(round_money(quote.exact_price, step, Rounding::up));
}

inline void add_charges(Quote& quote) {
  const QuoteTerms& terms = quote.terms;
  const auto share_of = [&](const Money& sum, const Rational& share) {
    return round_money(sum * share, minor_unit(quote.currency), Rounding::half_up);
  };
  if (terms.price_taxed) quote.taxed += quote.subtotal;
  for (const ExtraCost& extra : quote.billed) {
    if (extra.line.taxed) quote.taxed += extra.cost;
  }
  if (terms.service && !terms.service->after_tax) {
    quote.service = share_of(quote.subtotal, terms.service->share);
    if (terms.service->taxed) quote.taxed += quote.service;
  }
  if (terms.gratuity) {
    quote.gratuity = share_of(quote.subtotal, terms.gratuity->share);
    if (terms.gratuity->taxed) quote.taxed += quote.gratuity;
  }
  quote.tax = share_of(quote.taxed, terms.tax);
  if (terms.service && terms.service->after_tax) {
    quote.service = share_of(quote.subtotal + quote.tax, terms.service->share);
  }
  quote.total = quote.subtotal + quote.billed_total + quote.service + quote.gratuity + quote.tax;
  if (const auto& deposit = terms.conditions.deposit) {
    quote.deposit = deposit->sum.value_or(share_of(quote.total, deposit->share.value_or(0)));
    quote.deposit = std::min(quote.deposit, quote.total);
  }
  quote.balance = quote.total - quote.deposit;
}

inline void add_outcome(Quote& quote) {
  quote.margin = quote.subtotal - quote.cost;
  quote.margin_share = quote.margin / quote.subtotal;
  quote.mark_up_share = quote.margin / quote.cost;
  quote.food_share = food_cost_share(quote.food + quote.q_factor, quote.subtotal);
}

}  // namespace detail

/// The quote for `food` (the plate costs of all dishes) and these guests, in this currency. cost =
/// ((food x (1 + Q) + labour + extras) x (1 + overhead) + overhead of the event) x (1 +
/// contingency); the price of a guest is rounded up to its step, or to the minor unit where there
/// is none, and a share of it to the minor unit. It is divided among those who pay, be they there
/// or guaranteed and missing. Service charge, gratuity, tax and extras that are billed at cost are
/// not the caterer's income here: margin and food cost look at the subtotal. Throws Failure for
/// shares outside their range (a margin of 100 % or more, a food-cost share of 0, a tax above 100
/// %), a cost of 0 or less, a price step of 0 or less, figures below 0, and for no guest who pays.
inline Quote make_quote(const Money& food, const std::vector<PayingGuests>& guests,
                        const QuoteTerms& terms, const Currency& currency) {
  detail::check_terms(terms);
  check_guests(guests);
  check_not_negative("a cost of the food", food);
  Quote quote{terms, currency};
  quote.food = food;
  for (const PayingGuests& kind : guests) {
    quote.guests += kind.count;
    quote.full_prices += kind.count * kind.price_share;
  }
  quote.full_prices += detail::missing_guests(guests, terms);
  detail::add_costs(quote);
  check_positive("a cost", quote.cost);
  if (terms.rule == PricingRule::food_cost) check_positive("a cost of the food", food);
  detail::add_price(quote);
  detail::add_lines(quote, guests);
  // A price step may take the whole price.
  check_positive("a subtotal", quote.subtotal);
  detail::add_charges(quote);
  detail::add_outcome(quote);
  return quote;
}

}  // namespace platewright
