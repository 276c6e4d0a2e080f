// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/tested_amount.hpp.

#include <algorithm>
#include <string>

#include "platewright/recipe/tested_amount.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Mass> tested_weight(const RecipeLine& line, const RecipeBook& book) {
  const LineAmount* amount = line.amount.amount();
  if (amount == nullptr || amount->to_taste()) return std::nullopt;
  const Ingredient* ingredient = book.ingredient_of(line);
  const IngredientWeights none{line.name, {}};
  return weight_if_known(*amount->low(),
                         ingredient == nullptr ? none : weights_of(*ingredient, line.preparation));
}

namespace detail {

PLATEWRIGHT_BODY bool is_cut_line(const RecipeLine& line, const RecipeBook& book) {
  const Ingredient* ingredient = book.ingredient_of(line);
  return ingredient != nullptr && ingredient->is_cut;
}

PLATEWRIGHT_BODY std::vector<std::string> weighed_names(const Recipe& recipe,
                                                        const RecipeBook& book) {
  std::vector<std::string> out;
  for (const RecipeLine& line : recipe.lines) {
    if (tested_weight(line, book)) out.push_back(line.name);
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY std::vector<std::size_t> lines_shared(const WeightShare& share,
                                                       const Recipe& recipe,
                                                       const RecipeBook& book) {
  std::vector<std::size_t> out;
  for (const std::string& name : share.of) {
    bool met = false;
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
      const RecipeLine& line = recipe.lines[i];
      if (line.name != name && !(name == "meat" && detail::is_cut_line(line, book))) continue;
      if (!tested_weight(line, book)) continue;
      met = true;
      if (std::find(out.begin(), out.end(), i) == out.end()) out.push_back(i);
    }
    if (!met) throw Failure(problems::share_of_unknown(name, detail::weighed_names(recipe, book)));
  }
  return out;
}

PLATEWRIGHT_BODY Mass weight_shared(const WeightShare& share, const Recipe& recipe,
                                    const RecipeBook& book) {
  Mass out;
  for (const std::size_t i : lines_shared(share, recipe, book)) {
    out += *tested_weight(recipe.lines[i], book);
  }
  return out;
}

PLATEWRIGHT_BODY LineAmount tested_amount(const RecipeLine& line, const Recipe& recipe,
                                          const RecipeBook& book) {
  if (const LineAmount* amount = line.amount.amount()) return *amount;
  const WeightShare& share = *line.amount.share();
  try {
    return to_amount(weight_shared(share, recipe, book) * share.share, built_in_unit("gram"));
  } catch (const Failure& failure) {
    throw Failure(at(failure.problem(), line.place));
  }
}

}  // namespace platewright
