// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/schema_recipes.hpp.

#include <string>

#include "platewright/problem/catalogue/schema_recipes.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem schema_recipe_missing(std::size_t count) {
  return make_problem("schema-recipe-missing",
                      std::to_string(count) + " recipes of schema.org with a name",
                      "JSON-LD with one object of `\"@type\": \"Recipe\"`",
                      "save the block of JSON-LD alone, without the page around it, one recipe a "
                      "file");
}

PLATEWRIGHT_BODY Problem schema_line_unread(std::string_view line) {
  return make_problem(
      "schema-line-unread", "the ingredient " + in_quotes(line),
      "an amount and a name, as in `2 1/4 cups flour, sifted` or `salt, to taste`",
      "it stands in the file with `?` for its amount: write amount and name by hand");
}

PLATEWRIGHT_BODY Problem schema_name_unmatched(std::string_view name) {
  return make_problem(
      "schema-name-unmatched", "no " + in_quotes(name) + " in the book",
      "a name of the larder, or of a recipe",
      "write the line with the larder's name, or add it to the larder, with what it "
      "is and its allergens");
}

PLATEWRIGHT_BODY Problem schema_yield_unread(std::string_view written) {
  return make_problem("schema-yield-unread",
                      written.empty() ? "no `recipeYield`" : "the yield " + in_quotes(written),
                      "a number of servings, or an amount, as `4 servings` or `2 qt`",
                      "write what it makes into the file, as `makes: 4 portions of 6 oz`");
}

}  // namespace platewright::problems
