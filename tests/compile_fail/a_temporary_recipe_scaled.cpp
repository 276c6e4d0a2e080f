// SPDX-License-Identifier: MIT
// says: scale
// says: Recipe
// says: delete
// never says: boost::
// means: A scaled recipe refers to the recipe that it was made from, and this one is gone as soon
// means: as the line is over.
// do: Give the recipe a name, or put it into a book and scale the book's own.
#include "platewright/recipe/recipe_builders.hpp"
#include "platewright/recipe/scaled_recipe.hpp"

using namespace platewright;
using namespace platewright::builders;

Recipe soup() {
  return recipe_for("soup", 12, {line("stock", "3 qt")});
}

LineAmount stock(const ScalePlan& plan, const RecipeBook& book) {
#ifdef BAD_LINE
  const ScaledRecipe scaled = scale(soup(), plan, book);
#else
  const Recipe recipe = soup();
  const ScaledRecipe scaled = scale(recipe, plan, book);
#endif
  return scaled.lines.front().amount;
}
