// SPDX-License-Identifier: MIT
#pragma once
// What each of many recipes costs, in one go.

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "platewright/costing/plate_cost.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// One recipe of many, as it is written: the tested batch.
struct RecipeCost {
  std::string recipe;
  std::optional<Amount> makes;  ///< the whole batch, where the recipe says how much that is
  std::optional<Rational> portions;
  /// Of the batch and of one portion; nothing where something in it has no price.
  std::optional<Money> total;
  std::optional<Money> per_portion;
  std::set<std::string> unpriced;  ///< what has no price, in it and in the recipes that it uses
};

/// What has no price on the list, of a recipe and of all that it uses. Each recipe is looked at
/// once.
class UnpricedGoods {
 public:
  UnpricedGoods(const RecipeBook& book, const PriceList& prices) : book_(book), prices_(prices) {}
  UnpricedGoods(const RecipeBook&&, const PriceList&) = delete;
  UnpricedGoods(const RecipeBook&, const PriceList&&) = delete;
  UnpricedGoods(const RecipeBook&&, const PriceList&&) = delete;

  /// The book must have been checked: no recipes that use each other in a circle, none too deep.
  const std::set<std::string>& of(const Recipe& recipe);

 private:
  bool has_price(const std::string& ingredient) const;

  const RecipeBook& book_;
  const PriceList& prices_;
  std::map<std::string, std::set<std::string>> known_;
};

/// The cost of every recipe named, in that order, each as `PlateCosting` has it by itself; what one
/// uses of another is costed once for all of them. What has no price is named and not costed; any
/// other Failure of `PlateCosting::cost` is thrown.
std::vector<RecipeCost> cost_of_recipes(const std::vector<std::string>& names,
                                        const RecipeBook& book, const PriceList& prices);
std::vector<RecipeCost> cost_of_recipes(const std::vector<std::string>&, const RecipeBook&&,
                                        const PriceList&) = delete;

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/cost_of_recipes.hpp"
#endif
