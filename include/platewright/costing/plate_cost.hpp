// SPDX-License-Identifier: MIT
#pragma once
// What a recipe costs, line by line: what is used, not what must be bought in whole packs.

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/costing/bought_line.hpp"
#include "platewright/costing/by_products.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/recipe/nesting.hpp"

namespace platewright {

/// One line. The cost is purchased amount x as-purchased price - credit for by-products or, which
/// is the same, used amount x edible-portion price.
struct CostLine {
  std::string name;
  std::string part;
  bool is_recipe = false;
  bool to_taste = false;  ///< not costed: the Q factor of a quote stands for it
  bool free = false;
  LineAmount written;               ///< as the recipe has it, scaled
  std::optional<Amount> used;       ///< the amount that is costed: the upper end of a range
  Stage stage = Stage::trimmed;     ///< at which the amount is written
  Rational yield = 1;               ///< from as purchased to that stage
  std::string yield_name;           ///< whose yield it is
  std::optional<Amount> purchased;  ///< in the unit of the pack's content
  std::optional<UnitPrice> as_purchased;
  /// (as-purchased price - credit for by-products) / yield: used amount x this is the cost.
  std::optional<UnitPrice> edible_portion;
  /// Of a cut whose amount is written as purchased: the yield of its whole ladder, and what a unit
  /// of it costs on the plate.
  std::optional<Rational> served_yield;
  std::optional<UnitPrice> served_price;
  /// Served or else edible-portion price / as-purchased price; none where nothing is paid.
  std::optional<Rational> cost_factor;
  std::string supplier;
  std::optional<ForeignCurrency> written_in;  ///< the currency of the price, if not the list's
  Money credit;  ///< worth of the by-products, already taken off the cost
  Money cost;
  Rational share;  ///< of the total
};

/// The cost of a recipe at the size it was scaled to. The costs of the lines sum to the total
/// exactly.
struct PlateCost {
  std::string recipe;
  std::vector<CostLine> lines;
  Money total;
  std::optional<Rational> portions;
  std::optional<Money> per_portion;
};

/// Costs recipes from one book and one price list, each sub-recipe once. Both must live longer.
class PlateCosting {
 public:
  PlateCosting(const RecipeBook& book, const PriceList& prices) : book_(book), prices_(prices) {}
  PlateCosting(const RecipeBook&&, const PriceList&) = delete;
  PlateCosting(const RecipeBook&, const PriceList&&) = delete;
  PlateCosting(const RecipeBook&&, const PriceList&&) = delete;

  /// Sub-recipes are costed by what they yield: cost of one batch / what it makes x what is used,
  /// to any depth. Throws Failure for an ingredient without a price, an amount that does not lead
  /// to the pack's unit, a sub-recipe that does not say what it makes, and recipes that use each
  /// other in a circle.
  PlateCost cost(const ScaledRecipe& scaled) {
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

  /// Lines of the batches that are kept so far.
  std::size_t lines_kept() const { return lines_kept_; }

  /// One batch as the recipe is written. Throws Failure as `cost` does, and for an unknown name.
  const PlateCost& batch(const std::string& name) {
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

 private:
  static CostLine begun(const ScaledLine& line) {
    CostLine out;
    out.name = line.line->name;
    out.part = line.line->part;
    out.is_recipe = line.recipe != nullptr;
    out.to_taste = line.amount.to_taste();
    out.written = line.amount;
    out.used = amount_to_buy(line.amount);
    return out;
  }

  CostLine recipe_line(const ScaledLine& line) {
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

  CostLine bought_line(const ScaledRecipe& scaled, const ScaledLine& line) {
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

  void add_edible_prices(const Ingredient& ingredient, CostLine& out) const {
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

  const RecipeBook& book_;
  const PriceList& prices_;
  std::map<std::string, PlateCost> batches_;
  std::size_t lines_kept_ = 0;
  std::vector<std::string> under_way_;
};

/// The cost of one scaled recipe. Throws Failure as `PlateCosting::cost` does.
inline PlateCost plate_cost(const ScaledRecipe& scaled, const RecipeBook& book,
                            const PriceList& prices) {
  return PlateCosting(book, prices).cost(scaled);
}

}  // namespace platewright
