// SPDX-License-Identifier: MIT
#pragma once
// From the cost of the food to what a guest pays, with every step.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/costing/delivery_cost.hpp"
#include "platewright/costing/quote_terms.hpp"

namespace platewright {

/// Guests who pay alike.
struct PayingGuests {
  std::string kind;
  Rational count;
  Rational price_share = 1;                       ///< of the full price; 0 pays nothing
  std::optional<Money> own_price = std::nullopt;  ///< instead of a share of the full price
  std::string payer = {};                         ///< who pays for them; empty is the client
};

inline bool pays(const PayingGuests& kind) {
  return kind.own_price ? *kind.own_price > Money() : kind.price_share > 0;
}

/// How many full prices so many of a kind pay: two at half the price are one.
inline Rational full_prices_of(const PayingGuests& kind) {
  return kind.own_price ? Rational(0) : Rational(kind.count * kind.price_share);
}

struct LabourCost {
  LabourLine line;
  Rational workers;  ///< those of the line, or as many as the guests need
  Duration time;     ///< of all workers together
  Money cost;
};

struct ExtraCost {
  ExtraLine line;
  Rational count = 1;  ///< heads, or how many of it
  Money cost;          ///< exact; half up to the minor unit where it is billed
};

/// An extra on the bill, with what is off it.
struct BilledExtra {
  ExtraCost cost;
  std::vector<DiscountLine> discounts;
  Money left;  ///< cost - discounts
};

/// What is taxed at one rate, and its tax, half up to the minor unit.
struct TaxLine {
  TaxRate rate;
  Money base;  ///< with the tax in it where the prices include it
  Money tax;
};

/// What one kind of guests pays.
struct QuoteLine {
  PayingGuests guests;
  Money price;   ///< for one: its own, or full price x price share, up to the minor unit
  Money amount;  ///< count x price
};

/// Money is exact unless a member says how it is rounded. The cost of a quote is food, Q factor,
/// labour, extras, deliveries, overhead and contingency; what is paid is subtotal, billed extras,
/// service charge, gratuity and tax.
struct Quote {
  Quote(QuoteTerms by, Currency in) : terms(std::move(by)), currency(std::move(in)) {}

  QuoteTerms terms;
  Currency currency;
  Rational guests;         ///< all heads
  Rational full_prices;    ///< who pays, by how much: two at half the price are one
  Money own_prices;        ///< of guests whose price is no share of the full price, together
  Rational net_share = 1;  ///< of what the guests pay, without the tax that is in it

  Money food;
  Money q_factor;  ///< food x Q factor
  std::vector<LabourCost> labour;
  Money labour_total;
  std::vector<ExtraCost> extras;
  Money extras_total;
  std::vector<DeliveryCost> deliveries;  ///< of the goods, by supplier
  Money deliveries_total;
  Money overhead;     ///< share of all above, and the sum for the event
  Money contingency;  ///< share of all of these
  Money cost;

  Money target;       ///< what the pricing rule asks of all guests together, without tax
  Rational step_off;  ///< what the number of guests takes off the price, as a share of it
  /// The full price that brings in the target x (1 - step off); 0 where others bring it in, or no
  /// one pays a full price.
  Money exact_price;
  Money price;  ///< rounded up to its step, at least the minimum; or the one agreed
  std::vector<QuoteLine> lines;
  std::optional<QuoteLine> missing;     ///< guests who were guaranteed and are not among the lines
  std::vector<DiscountLine> discounts;  ///< off what the guests pay
  Money minimum_raise;                  ///< what the lines lack to the minimum charge
  Money subtotal;                   ///< lines and missing - discounts, at least the minimum charge
  std::vector<BilledExtra> billed;  ///< extras on the bill, outside the price
  Money billed_total;               ///< of what is left of them
  Money service;               ///< share of the subtotal (and its tax), half up to the minor unit
  Money gratuity;              ///< share of the subtotal, half up to the minor unit
  std::vector<TaxLine> taxes;  ///< one for each rate
  Money taxed;                 ///< of subtotal, billed extras, service and gratuity, what is taxed
  Money tax;                   ///< of all rates; in the prices already where they include it
  Money total;
  Money deposit;         ///< half up to the minor unit, at most the total; nothing where none is
  Money second_deposit;  ///< the same, at most what the first leaves
  Money balance;         ///< total - deposits
  Money received;        ///< the payments
  Money due;             ///< total - received; below 0 is to be paid back

  Money lost_on_extras;  ///< discounts off extras that are billed, without their tax
  Money income;  ///< the caterer's of what the guests pay: without its tax, less what is lost
  Money margin;  ///< income - cost; below 0 where the price does not cover the cost
  Rational margin_share;   ///< of the income
  Rational mark_up_share;  ///< of the cost
  Rational food_share;     ///< food and Q factor / income: the food cost percentage
};

}  // namespace platewright
