// SPDX-License-Identifier: MIT
#pragma once
// The trim test (trade: butcher's yield test): what a usable weight costs when a piece was cut up.

#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

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

  static TrimPart usable(std::string name, const Mass& weight) {
    return {std::move(name), PartKind::usable, weight, {}};
  }
  static TrimPart by_product(std::string name, const Mass& weight, const PricePerMass& value) {
    return {std::move(name), PartKind::by_product, weight, value};
  }
  static TrimPart waste(std::string name, const Mass& weight) {
    return {std::move(name), PartKind::waste, weight, {}};
  }
  static TrimPart cutting_loss(const Mass& weight) {
    return {"cutting loss", PartKind::cutting_loss, weight, {}};
  }
  /// The cutting loss that was not weighed: what the other parts leave of the whole.
  static TrimPart cutting_loss_left_over() {
    return {"cutting loss", PartKind::cutting_loss, std::nullopt, {}};
  }
  /// The usable part that was not weighed: what the trim leaves of the whole.
  static TrimPart usable_left_over(std::string name) {
    return {std::move(name), PartKind::usable, std::nullopt, {}};
  }
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

inline Money invoice_of(const TrimTest& test) {
  if (const auto* whole = std::get_if<Money>(&test.price)) return *whole;
  return std::get<PricePerMass>(test.price) * test.purchased;
}

inline void check_part(const TrimPart& part) {
  if (part.weight) check_not_negative("a part's weight", *part.weight);
  const bool may_be_left = part.kind == PartKind::cutting_loss || part.kind == PartKind::usable;
  if (!part.weight && !may_be_left) {
    throw Failure(problems::part_weight_missing(part.name));
  }
  if (part.kind != PartKind::by_product && part.value != PricePerMass{}) {
    throw Failure(problems::part_value_not_credited(part.name));
  }
}

/// The parts as lines; the one without a weight gets what is left of the whole. Usable lines have
/// no value yet.
inline std::vector<TrimLine> lines_of(const TrimTest& test) {
  Mass weighed;
  std::size_t left_open = 0;
  for (const TrimPart& part : test.parts) {
    check_part(part);
    weighed += part.weight.value_or(Mass{});
    if (!part.weight && ++left_open > 1) throw Failure(problems::part_weight_missing(part.name));
  }
  if (left_open == 1) {
    check_parts_within(weighed, test.purchased);
  } else {
    check_parts_add_up(weighed, test.purchased);
  }
  std::vector<TrimLine> lines;
  for (const TrimPart& part : test.parts) {
    const Mass weight = part.weight.value_or(test.purchased - weighed);
    lines.push_back(
        {part.name, part.kind, weight, weight / test.purchased, part.value, part.value * weight});
  }
  return lines;
}

}  // namespace detail

/// Works the sheet line by line. Throws Failure for a purchased weight, cost or portion of 0 or
/// less, parts that weigh more or less than the whole (naming the difference), a part without a
/// weight that is not the one that may be left open, a value on a part that is not a by-product, no
/// usable weight, and credits that reach the cost.
inline TrimTestResult work_out(const TrimTest& test) {
  check_positive("a purchased weight", test.purchased);
  TrimTestResult result;
  result.cut = test.cut;
  result.purchased = test.purchased;
  result.invoice = detail::invoice_of(test);
  check_positive("a purchase price", result.invoice);
  result.purchase_price = result.invoice / test.purchased;
  result.priced_whole = std::holds_alternative<Money>(test.price);
  result.labour = test.labour.value_or(PricePerMass{}) * test.purchased;
  result.total_cost = result.invoice + result.labour;
  result.lines = detail::lines_of(test);
  for (const TrimLine& line : result.lines) {
    if (line.kind == PartKind::usable) {
      result.usable += line.weight;
    } else {
      result.credits += line.value;
    }
  }
  if (result.usable == Mass{}) throw Failure(problems::usable_part_missing(test.cut));
  if (result.credits >= result.total_cost) {
    throw Failure(problems::credits_above_cost(figure_words(result.credits),
                                               figure_words(result.total_cost)));
  }
  result.trim = test.purchased - result.usable;
  result.yield = result.usable / test.purchased;
  result.net_cost = result.total_cost - result.credits;
  result.cost_per_weight = result.net_cost / result.usable;
  result.cost_factor = result.cost_per_weight / result.purchase_price;
  for (TrimLine& line : result.lines) {
    if (line.kind != PartKind::usable) continue;
    line.value_per_weight = result.cost_per_weight;
    line.value = result.cost_per_weight * line.weight;
  }
  if (test.portion) {
    check_positive("a portion", *test.portion);
    result.portion = portion_cost(*test.portion, result.cost_per_weight, result.cost_factor);
  }
  return result;
}

}  // namespace platewright
