// SPDX-License-Identifier: MIT
#pragma once
// What a recipe costs, line by line: what is used, not what must be bought in whole packs.

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "platewright/costing/bought_line.hpp"
#include "platewright/costing/by_products.hpp"
#include "platewright/problem/body.hpp"
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
  PlateCost cost(const ScaledRecipe& scaled);

  /// Lines of the batches that are kept so far.
  std::size_t lines_kept() const { return lines_kept_; }

  /// One batch as the recipe is written. Throws Failure as `cost` does, and for an unknown name.
  const PlateCost& batch(const std::string& name);

 private:
  static CostLine begun(const ScaledLine& line);

  CostLine recipe_line(const ScaledLine& line);

  CostLine bought_line(const ScaledRecipe& scaled, const ScaledLine& line);

  void add_edible_prices(const Ingredient& ingredient, CostLine& out) const;

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

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/plate_cost.hpp"
#endif
