// SPDX-License-Identifier: MIT
#pragma once
// The allergens of a dish as the chosen law lists them, each once.

#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/recipe_allergens.hpp"

namespace platewright {

/// One line: an allergen, what it is a kind of by the other law, and the ingredients that bring it.
struct DeclaredAllergen {
  std::string key;
  std::vector<std::string> kind_of;  ///< wheat: cereals containing gluten
  std::vector<std::string> ingredients;
};

/// What `found` is by the law of the table. An ingredient of wheat stands under wheat, which says
/// that it is a cereal containing gluten, and not under both; none is lost. What no law has a row
/// for stands as it is.
std::vector<DeclaredAllergen> declared(const std::vector<AllergenFound>& found,
                                       const AllergenTable& table);

/// What is told of a dish.
struct DeclaredAllergens {
  std::vector<DeclaredAllergen> contains;
  std::vector<DeclaredAllergen> may_contain;
  std::vector<std::string> not_stated;
};

DeclaredAllergens declared(const RecipeAllergens& allergens, const AllergenTable& table);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/declared_allergens.hpp"
#endif
