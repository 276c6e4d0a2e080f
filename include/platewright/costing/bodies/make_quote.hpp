// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/make_quote.hpp.

#include <utility>

#include "platewright/costing/make_quote.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY Rational workers_for(const LabourLine& line, const Rational& guests) {
  return line.guests_per_worker ? up_to(guests / *line.guests_per_worker, 1) : line.workers;
}

PLATEWRIGHT_BODY void add_billed(Quote& quote, const ExtraCost& cost) {
  BilledExtra out{cost, discounts_off(quote, cost.line.name, cost.cost), cost.cost};
  const Money off = sum_of(out.discounts);
  out.left -= off;
  quote.billed_total += out.left;
  quote.lost_on_extras +=
      quote.terms.prices_include_tax ? off * without_tax(cost.line.taxed, quote.terms.tax) : off;
  quote.billed.push_back(std::move(out));
}

PLATEWRIGHT_BODY void add_extras(Quote& quote) {
  const Money minor = minor_unit(quote.currency);
  for (const ExtraLine& line : quote.terms.extras) {
    const Rational count = line.per_guest ? quote.guests : line.count;
    const Money cost = line.price * count;
    if (line.billed) {
      add_billed(quote, {line, count, round_money(cost, minor, Rounding::half_up)});
    } else {
      quote.extras.push_back({line, count, cost});
      quote.extras_total += cost;
    }
  }
}

PLATEWRIGHT_BODY void add_costs(Quote& quote) {
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

PLATEWRIGHT_BODY Rational step_off(const QuoteTerms& terms, const Rational& guests) {
  const PriceStep* reached = nullptr;
  for (const PriceStep& step : terms.price_steps) {
    if (guests >= step.from && (reached == nullptr || step.from > reached->from)) reached = &step;
  }
  return reached == nullptr ? Rational(0) : reached->off;
}

/// A margin is a share of the price, a mark-up a share of the cost, a food-cost share the food's
/// share of the price.
PLATEWRIGHT_BODY Money target_of(const Quote& quote) {
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

PLATEWRIGHT_BODY Money exact_price(const Quote& quote) {
  const Money price = IncomeOfPrice(quote).price_for(quote.target).value_or(Money());
  return std::max(price, Money()) * Rational(1 - quote.step_off);
}

PLATEWRIGHT_BODY void add_price(Quote& quote) {
  const QuoteTerms& terms = quote.terms;
  quote.target = target_of(quote);
  quote.step_off = step_off(terms, quote.guests);
  quote.exact_price = exact_price(quote);
  const Money step = terms.round_up_to.value_or(minor_unit(quote.currency));
  const Money asked = std::max(round_money(quote.exact_price, step, Rounding::up),
                               terms.minimum_price.value_or(Money()));
  quote.price = terms.agreed_price.value_or(asked);
}

PLATEWRIGHT_BODY void add_outcome(Quote& quote) {
  quote.income = quote.subtotal * quote.net_share - quote.lost_on_extras;
  quote.margin = quote.income - quote.cost;
  quote.mark_up_share = quote.margin / quote.cost;
  // Discounts may take it all; then nothing is a share of it.
  if (quote.income <= Money()) return;
  quote.margin_share = quote.margin / quote.income;
  quote.food_share = food_cost_share(quote.food + quote.q_factor, quote.income);
}

PLATEWRIGHT_BODY void count_guests(Quote& quote, const std::vector<PayingGuests>& guests) {
  for (const PayingGuests& kind : guests) {
    quote.guests += kind.count;
    quote.full_prices += full_prices_of(kind);
    if (kind.own_price) quote.own_prices += *kind.own_price * kind.count;
  }
  quote.full_prices += missing_guests(guests, quote.terms);
}

}  // namespace detail

PLATEWRIGHT_BODY Quote make_quote(const Money& food, const std::vector<PayingGuests>& guests,
                                  const QuoteTerms& terms, const Currency& currency,
                                  std::vector<DeliveryCost> deliveries) {
  detail::check_terms(terms);
  check_guests(guests);
  check_not_negative("a cost of the food", food);
  for (const DeliveryCost& supplier : deliveries) {
    check_not_negative("a charge for a delivery", supplier.charge);
  }
  Quote quote{terms, currency};
  quote.food = food;
  quote.deliveries_total = cost_of_deliveries(deliveries);
  quote.deliveries = std::move(deliveries);
  if (terms.prices_include_tax) quote.net_share = without_tax(terms.price_taxed, terms.tax);
  detail::count_guests(quote, guests);
  detail::add_costs(quote);
  check_positive("a cost", quote.cost);
  if (terms.rule == PricingRule::food_cost) check_positive("a cost of the food", food);
  detail::add_price(quote);
  detail::add_lines(quote, guests);
  detail::add_charges(quote);
  detail::add_payments(quote);
  detail::add_outcome(quote);
  return quote;
}

}  // namespace platewright
