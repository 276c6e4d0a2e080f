#pragma once
// What a quote can't be made from.

#include <string_view>
#include <vector>

#include "platewright/costing/quote.hpp"
#include "platewright/problem/catalogue/costs.hpp"
#include "platewright/quantity/positive.hpp"

namespace platewright {

/// Throws Failure for a share that is not from 0 to 1.
inline void check_share(std::string_view what, const Rational& share) {
  if (share < 0 || share > 1) {
    throw Failure(problems::share_out_of_range(what, as_short_decimal(share * 100, 4) + " %",
                                               "a share from 0 to 100 %"));
  }
}

/// Throws Failure for a share that the rule can't work with.
inline void check_pricing_rule(PricingRule rule, const Rational& share) {
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

inline void check_deposit(const Conditions& conditions) {
  if (!conditions.deposit) return;
  if (conditions.deposit->share) check_share("a deposit", *conditions.deposit->share);
  if (conditions.deposit->sum) check_not_negative("a deposit", *conditions.deposit->sum);
}

inline void check_terms(const QuoteTerms& terms) {
  check_share("a Q factor", terms.q_factor);
  check_not_negative("an overhead", terms.overhead);
  check_share("a tax", terms.tax);
  if (terms.service) {
    check_share("a service charge", terms.service->share);
    if (terms.service->after_tax && terms.service->taxed) {
      throw Failure(problems::charge_taxed_after_tax());
    }
  }
  if (terms.gratuity) check_share("a gratuity", terms.gratuity->share);
  check_not_negative("an overhead", terms.overhead_of_event);
  check_share("a contingency", terms.contingency);
  if (terms.minimum_charge) check_not_negative("a minimum charge", *terms.minimum_charge);
  if (terms.agreed_price) check_positive("an agreed price", *terms.agreed_price);
  for (const PriceStep& step : terms.price_steps) check_share("what is off the price", step.off);
  check_deposit(terms.conditions);
  check_pricing_rule(terms.rule, terms.rule_share);
  if (terms.round_up_to) check_positive("a step of the price", *terms.round_up_to);
  for (const LabourLine& line : terms.labour) {
    check_not_negative("a cost of labour", line.rate * (line.time * line.workers));
    check_not_negative("a share of benefits", line.benefits);
    if (line.guests_per_worker) {
      check_positive("a number of guests for a worker", *line.guests_per_worker);
    }
  }
  for (const ExtraLine& line : terms.extras) check_not_negative("a price of an extra", line.price);
}

}  // namespace detail

/// Throws Failure for counts and shares below 0, and where no one pays.
inline void check_guests(const std::vector<PayingGuests>& guests) {
  Rational paying;
  for (const PayingGuests& kind : guests) {
    check_not_negative("a number of guests", kind.count);
    check_not_negative("a price share", kind.price_share);
    paying += kind.count * kind.price_share;
  }
  if (paying == 0) throw Failure(problems::quote_nobody_pays());
}

}  // namespace platewright
