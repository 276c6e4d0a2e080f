#pragma once
// What a caterer adds to the food, and by which rule a price is made.

#include <optional>
#include <string>
#include <vector>

#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright {

/// So many people at so much an hour.
struct LabourLine {
  std::string role;
  Rational workers = 1;
  Duration time;        ///< of each worker
  PricePerTime rate;    ///< with what comes on top of the wage
};

/// Hire, transport, disposables: for the whole event or for each guest.
struct ExtraLine {
  std::string name;
  Money price;
  bool per_guest = false;
};

/// The one rule that turns cost into price. They are different things: a margin is a share of the
/// price, a mark-up a share of the cost, a food-cost share compares the food alone with the price.
enum class PricingRule { margin, mark_up, food_cost };

struct Charge {
  Rational share;       ///< of what it is charged on
  bool taxed = false;
};

struct QuoteTerms {
  Rational q_factor;    ///< share of the food for the salt, oil and bread that no one measures
  std::vector<LabourLine> labour;
  std::vector<ExtraLine> extras;
  Rational overhead;    ///< share of food, labour and extras
  PricingRule rule = PricingRule::margin;
  Rational rule_share;  ///< the margin, mark-up or food-cost share
  std::optional<Money> round_up_to;  ///< step of the price for a guest
  std::optional<Charge> service;
  Rational tax;         ///< share of what is taxed
};

}  // namespace platewright
