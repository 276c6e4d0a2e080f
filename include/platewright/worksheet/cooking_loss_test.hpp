// SPDX-License-Identifier: MIT
#pragma once
// The cooking loss test: what a servable weight costs after the oven and the carving board.

#include <optional>
#include <string>
#include <utility>

#include "platewright/problem/body.hpp"
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
  static TrimmedCost from(const TrimTestResult& test, CostBase base);

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
CookingLossResult work_out(const CookingLossTest& test);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/cooking_loss_test.hpp"
#endif
