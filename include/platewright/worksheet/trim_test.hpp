// SPDX-License-Identifier: MIT
#pragma once
// The trim test (trade: butcher's yield test): what a usable weight costs when a piece was cut up.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/quantity/positive.hpp"
#include "platewright/worksheet/detail/parts.hpp"
#include "platewright/worksheet/portion_cost.hpp"

namespace platewright {

enum class PartKind { usable, by_product, waste, cutting_loss };

/// One of the weights on the table when the cutting is done.
struct TrimPart {
  std::string name;
  PartKind kind = PartKind::usable;
  /// None says "whatever is left of the whole"; only one usable part or cutting loss may say so.
  std::optional<Mass> weight;
  /// What a by-product is worth; 0 for every other kind.
  PricePerMass value;

  static TrimPart usable(std::string name, const Mass& weight);
  static TrimPart by_product(std::string name, const Mass& weight, const PricePerMass& value);
  static TrimPart waste(std::string name, const Mass& weight);
  static TrimPart cutting_loss(const Mass& weight);
  /// The cutting loss that was not weighed: what the other parts leave of the whole.
  static TrimPart cutting_loss_left_over();
  /// The usable part that was not weighed: what the trim leaves of the whole.
  static TrimPart usable_left_over(std::string name);
};

/// The sheet as it is filled in.
struct TrimTest {
  std::string cut;
  Mass purchased;
  /// Per weight as purchased, or for the whole piece.
  std::variant<PricePerMass, Money> price;
  /// Per weight as purchased. It is paid before anything is lost, so that it enters before the
  /// yield.
  std::optional<PricePerMass> labour;
  std::vector<TrimPart> parts;
  std::optional<Mass> portion;
};

/// A line of the worked sheet. The values of all lines add up to the total cost.
struct TrimLine {
  std::string name;
  PartKind kind = PartKind::usable;
  Mass weight;
  /// Of the weight as purchased.
  Rational share;
  /// A by-product's own value; for a usable part the cost per usable weight; 0 for the others.
  PricePerMass value_per_weight;
  Money value;
};

/// Every step of the worked sheet.
struct TrimTestResult {
  std::string cut;
  Mass purchased;
  PricePerMass purchase_price;
  /// True where the price was for the whole piece, so that the price per weight was worked out.
  bool priced_whole = false;
  Money invoice;
  Money labour;
  /// invoice + labour
  Money total_cost;
  std::vector<TrimLine> lines;
  Mass usable;
  /// All that is not usable: purchased - usable.
  Mass trim;
  /// usable / purchased
  Rational yield;
  /// What the by-products are worth together.
  Money credits;
  /// total cost - credits: the cost of the usable part
  Money net_cost;
  /// net cost / usable weight
  PricePerMass cost_per_weight;
  /// cost per usable weight / purchase price per weight
  Rational cost_factor;
  std::optional<PortionCost> portion;

  /// The cost per usable weight at another purchase price: price x cost factor. It takes for
  /// granted that by-products and labour move with the price, as the factor does.
  PricePerMass cost_per_weight_at(const PricePerMass& price) const { return price * cost_factor; }
};

namespace detail {

/// The parts as lines; the one without a weight gets what is left of the whole. Usable lines have
/// no value yet.
std::vector<TrimLine> lines_of(const TrimTest& test);

}  // namespace detail

/// Works the sheet line by line. Throws Failure for a purchased weight, cost or portion of 0 or
/// less, parts that weigh more or less than the whole (naming the difference), a part without a
/// weight that is not the one that may be left open, a value on a part that is not a by-product, no
/// usable weight, and credits that reach the cost.
TrimTestResult work_out(const TrimTest& test);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/trim_test.hpp"
#endif
