// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/quote_checks.hpp.

#include <string>

#include "platewright/costing/quote_checks.hpp"

namespace platewright {

PLATEWRIGHT_BODY void check_share(std::string_view what, const Rational& share) {
  if (share < 0 || share > 1) {
    throw Failure(problems::share_out_of_range(what, as_short_decimal(share * 100, 4) + " %",
                                               "a share from 0 to 100 %"));
  }
}

PLATEWRIGHT_BODY void check_pricing_rule(PricingRule rule, const Rational& share) {
  switch (rule) {
    case PricingRule::margin:
      if (share < 0 || share >= 1) {
        throw Failure(problems::share_out_of_range("a margin",
                                                   as_short_decimal(share * 100, 4) + " %",
                                                   "a share of the price, from 0 to below 100 %"));
      }
      return;
    case PricingRule::mark_up:
      if (share < 0) {
        throw Failure(problems::share_out_of_range("a mark-up",
                                                   as_short_decimal(share * 100, 4) + " %",
                                                   "a share of the cost, 0 or above"));
      }
      return;
    case PricingRule::food_cost:
      if (share <= 0 || share > 1) {
        throw Failure(problems::share_out_of_range("a food cost",
                                                   as_short_decimal(share * 100, 4) + " %",
                                                   "a share of the price, above 0, to 100 %"));
      }
      return;
  }
}

namespace detail {

PLATEWRIGHT_BODY void check_tax(const QuoteTerms& terms) {
  for (const TaxRate& rate : terms.tax.all()) check_share("a tax", rate.share);
  const auto check_taxed = [&](const Taxed& taxed) {
    Rational sum;
    for (const TaxedPart& part : taxed.parts()) {
      check_share("a taxed part", part.share);
      sum += part.share;
    }
    check_share("what is taxed", sum);
  };
  check_taxed(terms.price_taxed);
  for (const ExtraLine& line : terms.extras) check_taxed(line.taxed);
  for (const auto& charge : {terms.service, terms.gratuity}) {
    if (charge) check_taxed(charge->taxed);
  }
}

}  // namespace detail

PLATEWRIGHT_BODY void check_service(const QuoteTerms& terms) {
  if (!terms.service) return;
  check_share("a service charge", terms.service->share);
  if (!terms.service->after_tax) return;
  if (terms.service->taxed) throw Failure(problems::charge_taxed_after_tax());
  if (terms.prices_include_tax) throw Failure(problems::charge_after_tax_included());
}

namespace detail {

/// As it is written where no currency is known: `25`, `25.50`; all of its digits where those are
/// not enough.
PLATEWRIGHT_BODY std::string plain_sum(const Money& sum) {
  const Rational number = sum.in(units::currency_unit);
  const bool in_hundredths = denominator_of(number * 100) == 1;
  return in_hundredths && denominator_of(number) != 1 ? as_decimal(number, 2) : as_exact(number);
}

}  // namespace detail

PLATEWRIGHT_BODY void check_agreed_price(const QuoteTerms& terms) {
  if (!terms.agreed_price) return;
  check_not_negative("an agreed price", *terms.agreed_price);
  if (terms.minimum_price && *terms.agreed_price < *terms.minimum_price) {
    throw Failure(problems::agreed_below_minimum(
        detail::plain_sum(*terms.agreed_price), detail::plain_sum(*terms.minimum_price),
        detail::plain_sum(*terms.minimum_price - *terms.agreed_price)));
  }
}

PLATEWRIGHT_BODY void check_deposits(const Conditions& conditions) {
  Rational shares;
  for (const auto& deposit : {conditions.deposit, conditions.second_deposit}) {
    if (!deposit) continue;
    if (deposit->share) check_share("a deposit", *deposit->share);
    if (deposit->sum) check_not_negative("a deposit", *deposit->sum);
    shares += deposit->share.value_or(0);
  }
  check_share("both deposits together", shares);
}

namespace detail {

PLATEWRIGHT_BODY void check_discounts(const QuoteTerms& terms) {
  for (const Discount& discount : terms.discounts) {
    if (discount.share) check_share("a discount", *discount.share);
    if (discount.sum) check_not_negative("a discount", *discount.sum);
  }
}

PLATEWRIGHT_BODY void check_prices(const QuoteTerms& terms) {
  if (terms.minimum_charge) check_not_negative("a minimum charge", *terms.minimum_charge);
  if (terms.minimum_price) check_not_negative("a minimum for a guest", *terms.minimum_price);
  check_agreed_price(terms);
  for (const PriceStep& step : terms.price_steps) check_share("what is off the price", step.off);
  if (terms.round_up_to) check_positive("a step of the price", *terms.round_up_to);
}

PLATEWRIGHT_BODY void check_terms(const QuoteTerms& terms) {
  check_share("a Q factor", terms.q_factor);
  check_not_negative("an overhead", terms.overhead);
  check_tax(terms);
  check_service(terms);
  if (terms.gratuity) check_share("a gratuity", terms.gratuity->share);
  check_not_negative("an overhead", terms.overhead_of_event);
  check_share("a contingency", terms.contingency);
  check_prices(terms);
  check_discounts(terms);
  check_deposits(terms.conditions);
  for (const Payment& payment : terms.conditions.payments) {
    check_not_negative("a payment", payment.sum);
  }
  check_pricing_rule(terms.rule, terms.rule_share);
  for (const LabourLine& line : terms.labour) {
    check_not_negative("a cost of labour", line.rate * (line.time * line.workers));
    check_not_negative("a share of benefits", line.benefits);
    if (line.guests_per_worker) {
      check_positive("a number of guests for a worker", *line.guests_per_worker);
    }
  }
  for (const ExtraLine& line : terms.extras) {
    check_not_negative("a price of an extra", line.price);
    check_not_negative("a number of an extra", line.count);
  }
}

}  // namespace detail

PLATEWRIGHT_BODY void check_guests(const std::vector<PayingGuests>& guests) {
  Rational paying;
  for (const PayingGuests& kind : guests) {
    check_not_negative("a number of guests", kind.count);
    check_not_negative("a price share", kind.price_share);
    if (kind.own_price) check_not_negative("a price of their own", *kind.own_price);
    if (pays(kind)) paying += kind.count;
  }
  if (paying == 0) throw Failure(problems::quote_nobody_pays());
}

}  // namespace platewright
