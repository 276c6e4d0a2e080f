// SPDX-License-Identifier: MIT
#pragma once
// The cooking loss test: what a servable weight costs after the oven and the carving board.

#include <optional>
#include <string>
#include <utility>

#include "platewright/worksheet/trim_test.hpp"

namespace platewright {

/// Where the cost of the oven-ready weight comes from. Sheets of the trade do either, and the two
/// give different portion costs, so that the user says which.
enum class CostBase {
  invoice,         ///< all that was paid, by-products not taken off
  net_of_credits,  ///< what was paid, less what the by-products are worth
};

/// The cost of the oven-ready weight. It can only be made by naming its base.
class TrimmedCost {
 public:
  static TrimmedCost from_invoice(const Money& cost) { return {CostBase::invoice, cost}; }
  static TrimmedCost net_of_credits(const Money& cost) { return {CostBase::net_of_credits, cost}; }
  /// From a worked trim test: its total cost (labour included) or its net cost.
  static TrimmedCost from(const TrimTestResult& test, CostBase base) {
    return {base, base == CostBase::invoice ? test.total_cost : test.net_cost};
  }

  CostBase base() const { return base_; }
  const Money& cost() const { return cost_; }

 private:
  TrimmedCost(CostBase base, Money cost) : base_(base), cost_(std::move(cost)) {}

  CostBase base_;
  Money cost_;
};

/// The sheet as it is filled in. The oven-ready weight is the trimmed one.
struct CookingLossTest {
  std::string cut;
  Mass trimmed;
  TrimmedCost cost;
  /// Per weight as purchased, for the cost factor.
  PricePerMass purchase_price;
  Mass cooked;
  Mass bones_and_trim;
  /// None says "what bones and trim leave of the cooked weight".
  std::optional<Mass> saleable;
  std::optional<Mass> portion;
};

/// Every step of the worked sheet. Shares are of the oven-ready weight.
struct CookingLossResult {
  std::string cut;
  CostBase base = CostBase::invoice;
  Money cost;
  PricePerMass purchase_price;
  Mass trimmed;
  /// trimmed - cooked
  Mass cooking_loss;
  Mass cooked;
  Mass bones_and_trim;
  /// cooked - bones and trim
  Mass saleable;
  /// The trade's shrink: cooking loss / trimmed.
  Rational shrink;
  Rational cooked_share;
  Rational bones_and_trim_share;
  /// saleable / trimmed: the yield of this step
  Rational saleable_share;
  /// cost / saleable weight
  PricePerMass cost_per_weight;
  /// cost per saleable weight / purchase price per weight
  Rational cost_factor;
  std::optional<PortionCost> portion;

  /// The cost per saleable weight at another purchase price: price x cost factor.
  PricePerMass cost_per_weight_at(const PricePerMass& price) const { return price * cost_factor; }
};

/// Works the sheet step by step. Throws Failure for a trimmed weight, cost, purchase price,
/// saleable weight or portion of 0 or less, a cooked weight above the trimmed one, and for bones,
/// trim and saleable weight that do not add up to the cooked one (naming the difference).
inline CookingLossResult work_out(const CookingLossTest& test) {
  check_positive("a trimmed weight", test.trimmed);
  check_positive("a cost", test.cost.cost());
  check_positive("a purchase price", test.purchase_price * test.trimmed);
  check_not_negative("a weight of bones and trim", test.bones_and_trim);
  detail::check_parts_within(test.cooked, test.trimmed);
  detail::check_parts_within(test.bones_and_trim, test.cooked);
  const Mass saleable = test.saleable.value_or(test.cooked - test.bones_and_trim);
  check_positive("a saleable weight", saleable);
  detail::check_parts_add_up(test.bones_and_trim + saleable, test.cooked);

  CookingLossResult result;
  result.cut = test.cut;
  result.base = test.cost.base();
  result.cost = test.cost.cost();
  result.purchase_price = test.purchase_price;
  result.trimmed = test.trimmed;
  result.cooking_loss = test.trimmed - test.cooked;
  result.cooked = test.cooked;
  result.bones_and_trim = test.bones_and_trim;
  result.saleable = saleable;
  result.shrink = result.cooking_loss / test.trimmed;
  result.cooked_share = test.cooked / test.trimmed;
  result.bones_and_trim_share = test.bones_and_trim / test.trimmed;
  result.saleable_share = saleable / test.trimmed;
  result.cost_per_weight = result.cost / saleable;
  result.cost_factor = result.cost_per_weight / test.purchase_price;
  if (test.portion) {
    check_positive("a portion", *test.portion);
    result.portion = portion_cost(*test.portion, result.cost_per_weight, result.cost_factor);
  }
  return result;
}

}  // namespace platewright
