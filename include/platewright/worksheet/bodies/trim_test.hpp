// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/trim_test.hpp.

#include <cstddef>
#include <utility>

#include "platewright/worksheet/trim_test.hpp"

namespace platewright {

PLATEWRIGHT_BODY TrimPart TrimPart::usable(std::string name, const Mass& weight) {
  return {std::move(name), PartKind::usable, weight, {}};
}

PLATEWRIGHT_BODY TrimPart TrimPart::by_product(std::string name, const Mass& weight,
                                               const PricePerMass& value) {
  return {std::move(name), PartKind::by_product, weight, value};
}

PLATEWRIGHT_BODY TrimPart TrimPart::waste(std::string name, const Mass& weight) {
  return {std::move(name), PartKind::waste, weight, {}};
}

PLATEWRIGHT_BODY TrimPart TrimPart::cutting_loss(const Mass& weight) {
  return {"cutting loss", PartKind::cutting_loss, weight, {}};
}

PLATEWRIGHT_BODY TrimPart TrimPart::cutting_loss_left_over() {
  return {"cutting loss", PartKind::cutting_loss, std::nullopt, {}};
}

PLATEWRIGHT_BODY TrimPart TrimPart::usable_left_over(std::string name) {
  return {std::move(name), PartKind::usable, std::nullopt, {}};
}

namespace detail {

PLATEWRIGHT_BODY Money invoice_of(const TrimTest& test) {
  if (const auto* whole = std::get_if<Money>(&test.price)) return *whole;
  return std::get<PricePerMass>(test.price) * test.purchased;
}

PLATEWRIGHT_BODY void check_part(const TrimPart& part) {
  if (part.weight) check_not_negative("a part's weight", *part.weight);
  const bool may_be_left = part.kind == PartKind::cutting_loss || part.kind == PartKind::usable;
  if (!part.weight && !may_be_left) {
    throw Failure(problems::part_weight_missing(part.name));
  }
  if (part.kind != PartKind::by_product && part.value != PricePerMass{}) {
    throw Failure(problems::part_value_not_credited(part.name));
  }
}

PLATEWRIGHT_BODY std::vector<TrimLine> lines_of(const TrimTest& test) {
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

PLATEWRIGHT_BODY TrimTestResult work_out(const TrimTest& test) {
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
