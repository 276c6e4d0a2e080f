#pragma once
// From the cost of the food to what a guest pays, with every step.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/costing/quote_terms.hpp"

namespace platewright {

/// Guests who pay alike.
struct PayingGuests {
  std::string kind;
  Rational count;
  Rational price_share = 1;  ///< of the full price; 0 pays nothing
};

struct LabourCost {
  LabourLine line;
  Rational workers;  ///< those of the line, or as many as the guests need
  Duration time;     ///< of all workers together
  Money cost;
};

struct ExtraCost {
  ExtraLine line;
  Rational count = 1;  ///< heads, or 1 for the whole event
  Money cost;          ///< exact; half up to the minor unit where it is billed
};

/// What one kind of guests pays.
struct QuoteLine {
  PayingGuests guests;
  Money price;   ///< for one: full price x price share, up to the minor unit
  Money amount;  ///< count x price
};

/// Money is exact unless a member says how it is rounded. The cost of a quote is food, Q factor,
/// labour, extras, overhead and contingency; what is paid is subtotal, billed extras, service
/// charge, gratuity and tax.
struct Quote {
  Quote(QuoteTerms by, Currency in) : terms(std::move(by)), currency(std::move(in)) {}

  QuoteTerms terms;
  Currency currency;
  Rational guests;       ///< all heads
  Rational full_prices;  ///< who pays, by how much: two at half the price are one

  Money food;
  Money q_factor;  ///< food x Q factor
  std::vector<LabourCost> labour;
  Money labour_total;
  std::vector<ExtraCost> extras;
  Money extras_total;
  Money overhead;     ///< share of food, Q factor, labour and extras, and the sum for the event
  Money contingency;  ///< share of all of these
  Money cost;

  Money target;       ///< what the pricing rule asks of all guests together
  Rational step_off;  ///< what the number of guests takes off the price, as a share of it
  Money exact_price;  ///< target / full prices x (1 - what is off)
  Money price;        ///< rounded up to the step of the price, or the one agreed
  std::vector<QuoteLine> lines;
  std::optional<QuoteLine> missing;  ///< guests who were guaranteed and are not among the lines
  Money minimum_raise;               ///< what the lines lack to the minimum charge
  Money subtotal;                 ///< sum of the lines and the missing, at least the minimum charge
  std::vector<ExtraCost> billed;  ///< extras on the bill, outside the price
  Money billed_total;
  Money service;   ///< share of the subtotal (and its tax), half up to the minor unit
  Money gratuity;  ///< share of the subtotal, half up to the minor unit
  Money taxed;     ///< of subtotal, billed extras, service and gratuity, what is taxed
  Money tax;       ///< half up to the minor unit
  Money total;
  Money deposit;  ///< half up to the minor unit, at most the total; nothing where none is asked
  Money balance;  ///< total - deposit

  Money margin;            ///< subtotal - cost; below 0 where the price does not cover the cost
  Rational margin_share;   ///< of the subtotal
  Rational mark_up_share;  ///< of the cost
  Rational food_share;     ///< food and Q factor / subtotal: the food cost percentage
};

}  // namespace platewright
