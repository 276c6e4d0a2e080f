// SPDX-License-Identifier: MIT
#pragma once
// A recipe as other people's pages and programs take it: in the vocabulary of schema.org.

#include <string>
#include <vector>

#include "platewright/card/recipe_card.hpp"

namespace platewright {

/// What the vocabulary has words for is texts alone.
struct PublishedRecipe {
  std::string name;
  std::string makes;                     ///< `10 portions of 6 oz`; empty where it is not known
  std::vector<std::string> ingredients;  ///< `1 oz garlic, grated`; `black pepper to taste`
  std::vector<std::string> steps;        ///< the oven where the step stands that it is for
  std::vector<std::string> cautions;     ///< allergens, temperatures, limits, notes
};

/// The recipe as its card has it: the same measures, without the error of what is rounded. A cut is
/// at its weight with the pieces behind it, `67 lb 8 oz lamb leg, bone-in, as 9 legs`; an amount
/// that is written at a stage of its own says so last, `as cooked`, which `take_in_recipe` reads
/// back. The vocabulary has no place for allergens, safe temperatures and limits: they stand in the
/// description, so that they go wherever the recipe goes.
PublishedRecipe published_recipe(const ScaledRecipe& scaled, const Book& book,
                                 const CardOptions& options = {});

/// One `Recipe` as JSON-LD, several in a `@graph`, to be put into a page's `script` as it is: no
/// name can end that element. Bytes that are not UTF-8 are replaced, and signs that nobody sees are
/// escapes, as in every JSON that is written.
std::string write_json_ld(const std::vector<PublishedRecipe>& recipes);

}  // namespace platewright
