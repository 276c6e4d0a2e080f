// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/plate_cost.hpp.

#include <utility>

#include "platewright/costing/plate_cost.hpp"

namespace platewright {

PLATEWRIGHT_BODY PlateCost PlateCosting::cost(const ScaledRecipe& scaled) {
  PlateCost out;
  out.recipe = scaled.recipe->name;
  out.lines.reserve(scaled.lines.size());
  for (const ScaledLine& line : scaled.lines) {
    out.lines.push_back(line.recipe != nullptr ? recipe_line(line) : bought_line(scaled, line));
    out.total += out.lines.back().cost;
  }
  if (out.total > Money{}) {
    for (CostLine& line : out.lines) line.share = line.cost / out.total;
  }
  out.portions = scaled.plan.portions;
  if (out.portions && *out.portions > 0) out.per_portion = out.total / *out.portions;
  return out;
}

PLATEWRIGHT_BODY const PlateCost& PlateCosting::batch(const std::string& name) {
  if (const auto known = batches_.find(name); known != batches_.end()) return known->second;
  for (std::size_t i = 0; i < under_way_.size(); ++i) {
    if (under_way_[i] != name) continue;
    std::vector<std::string> circle(under_way_.begin() + static_cast<std::ptrdiff_t>(i),
                                    under_way_.end());
    circle.push_back(name);
    throw Failure(problems::recipe_cycle(circle));
  }
  const Recipe& recipe = book_.recipe(name);
  under_way_.push_back(name);
  PlateCost whole = cost(scale(recipe, plan_for_factor(recipe, 1, book_), book_));
  lines_kept_ += whole.lines.size();
  if (lines_kept_ > most_plan_lines) throw Failure(problems::plan_too_large(most_plan_lines));
  under_way_.pop_back();
  return batches_.emplace(name, std::move(whole)).first->second;
}

PLATEWRIGHT_BODY CostLine PlateCosting::begun(const ScaledLine& line) {
  CostLine out;
  out.name = line.line->name;
  out.part = line.line->part;
  out.is_recipe = line.recipe != nullptr;
  out.to_taste = line.amount.to_taste();
  out.written = line.amount;
  out.used = amount_to_buy(line.amount);
  return out;
}

PLATEWRIGHT_BODY CostLine PlateCosting::recipe_line(const ScaledLine& line) {
  CostLine out = begun(line);
  if (!out.used) return out;
  try {
    const Rational batches = batches_for(*line.recipe, *out.used);
    out.purchased = out.used;
    out.cost = batch(out.name).total * batches;
    if (out.used->number > 0) {
      out.as_purchased = price_per_unit(out.cost, *out.used);
      out.edible_portion = out.as_purchased;
    }
  } catch (const Failure& failure) {
    throw Failure(at(failure.problem(), line.line->place));
  }
  return out;
}

PLATEWRIGHT_BODY CostLine PlateCosting::bought_line(const ScaledRecipe& scaled,
                                                    const ScaledLine& line) {
  CostLine out = begun(line);
  const Ingredient& ingredient = book_.ingredient(out.name);
  out.stage = stage_of(*line.line, ingredient);
  if (out.to_taste) return out;
  const Purchase* purchase = preferred_purchase(out.name, prices_, line.line->place);
  if (purchase == nullptr) {
    out.free = true;
    return out;
  }
  const std::optional<Bought> bought = bought_for(scaled, line, ingredient, book_, *purchase);
  out.purchased = bought->amount;
  out.yield = bought->yield;
  out.yield_name = ingredient.yield_name;
  out.as_purchased = unit_price(*purchase);
  out.supplier = purchase->supplier;
  out.written_in = purchase->written_in;
  out.credit = by_product_credit(*prices_.find(out.name), bought->amount);
  out.cost = price_of(bought->amount, *purchase) - out.credit;
  add_edible_prices(ingredient, out);
  return out;
}

PLATEWRIGHT_BODY void PlateCosting::add_edible_prices(const Ingredient& ingredient,
                                                      CostLine& out) const {
  const Unit& unit = out.as_purchased->unit;
  const Money credit = by_product_credit(*prices_.find(out.name), Amount{1, unit});
  const UnitPrice net{out.as_purchased->price - credit, unit};
  if (out.yield > 0) out.edible_portion = edible_portion_price(net, out.yield);
  if (ingredient.is_cut && out.stage == Stage::purchased) {
    out.served_yield = ingredient.ladder.yield();
    out.served_price = edible_portion_price(net, *out.served_yield);
  }
  const std::optional<UnitPrice>& last = out.served_price ? out.served_price : out.edible_portion;
  if (last && out.as_purchased->price > Money()) {
    out.cost_factor = last->price / out.as_purchased->price;
  }
}

}  // namespace platewright
