// SPDX-License-Identifier: MIT
#pragma once
// What a caterer adds to the food, and by which rule a price is made.

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "platewright/costing/discount.hpp"
#include "platewright/costing/taxed.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright {

/// A day on the calendar of the event's place.
using LocalDay = std::chrono::local_days;

/// So many people at so much an hour.
struct LabourLine {
  std::string role;
  Rational workers = 1;  ///< where no number of guests decides
  Duration time;         ///< of each worker
  PricePerTime rate;     ///< the wage
  /// What comes on top of the wage, as a share of it.
  Rational benefits = 0;
  /// One worker for so many guests, the last one whole: 84 guests at 20 are 5 workers.
  std::optional<Rational> guests_per_worker = std::nullopt;
};

/// Hire, transport, disposables: for the whole event or for each guest.
struct ExtraLine {
  std::string name;
  Money price;
  bool per_guest = false;
  /// Stands on the client's bill as a line of its own, at its price, and not in the price of a
  /// guest.
  bool billed = false;
  Taxed taxed = true;  ///< of a line that is billed
  Rational count = 1;  ///< of a line that is not per guest
};

/// The one rule that turns cost into price. They are different things: a margin is a share of the
/// price, a mark-up a share of the cost, a food-cost share compares the food alone with the price.
enum class PricingRule { margin, mark_up, food_cost };

struct Charge {
  Rational share;  ///< of what it is charged on
  Taxed taxed = false;
  /// Charged on the price with its tax, not on the price alone; then it can't be taxed itself.
  bool after_tax = false;
};

/// From so many guests on, the price is lower by a share.
struct PriceStep {
  Rational from;  ///< heads
  Rational off;   ///< of the price
};

/// What is paid in advance: a share of the total, or a sum.
struct Deposit {
  std::optional<Rational> share;
  std::optional<Money> sum;
  std::optional<LocalDay> by;
};

/// What the client has paid already.
struct Payment {
  LocalDay on;
  Money sum;
  std::string by = {};  ///< how: bank transfer, card
};

/// Who cancels so many days before the event, or later, pays a share of the total.
struct CancellationStep {
  Rational days_before;  ///< whole; 0 is the day itself
  Rational share;
};

/// What the client signs besides the price.
struct Conditions {
  std::optional<LocalDay> valid_until;
  std::optional<LocalDay> guarantee_by;  ///< the day on which the number of guests is settled
  /// At least so many are paid, of those who pay at all: one that is missing pays the full price.
  std::optional<Rational> guaranteed_guests;
  std::optional<Deposit> deposit;
  std::optional<Deposit> second_deposit;
  std::optional<LocalDay> balance_by;
  std::vector<Payment> payments;
  std::vector<CancellationStep> cancellation;  ///< the nearer the event, the larger the share
};

struct QuoteTerms {
  Rational q_factor;  ///< share of the food for the salt, oil and bread that no one measures
  std::vector<LabourLine> labour;
  std::vector<ExtraLine> extras;
  Rational overhead;        ///< share of food, labour and extras
  Money overhead_of_event;  ///< a sum beside that share
  Rational contingency;     ///< share of all costs, for what goes wrong
  PricingRule rule = PricingRule::margin;
  Rational rule_share;                  ///< the margin, mark-up or food-cost share
  std::vector<PriceStep> price_steps;   ///< the one with the most guests that are reached counts
  std::optional<Money> round_up_to;     ///< step of the price for a guest
  std::optional<Money> minimum_charge;  ///< of what the guests pay together
  std::optional<Money> minimum_price;   ///< of the full price
  /// The full price that was agreed already: it counts in place of what the rule asks for.
  std::optional<Money> agreed_price;
  std::optional<Charge> service;
  std::optional<Charge> gratuity;  ///< for the staff, beside the service charge
  TaxRates tax;
  Taxed price_taxed = true;  ///< what the guests pay
  /// All prices and charges have their tax in them; else it comes on top.
  bool prices_include_tax = false;
  std::vector<Discount> discounts;
  Conditions conditions;
  Place place = {};  ///< where the book says them
};

}  // namespace platewright
