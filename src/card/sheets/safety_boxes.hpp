// SPDX-License-Identifier: MIT
#pragma once
// Allergens and temperatures, as cards and clients' sheets print them.

#include <string>
#include <vector>

#include "platewright/book/book.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/recipe/declared_allergens.hpp"
#include "platewright/recipe/scaled_recipe.hpp"

namespace platewright::card {

/// `garlic, flour`.
std::string listed(const std::vector<std::string>& names);

/// `wheat (cereals containing gluten)`.
std::string allergen_name(const DeclaredAllergen& allergen);

/// Each allergen, once, with the ingredients that bring it, as in `milk: butter, cream`; what may
/// be in it; of what nothing is known; where every ingredient is said to have none, that.
std::vector<std::string> allergen_lines(const RecipeAllergens& all, const DeclaredAllergens& known);

/// What is said where nothing is declared and everything is stated: none at all, or none of the
/// list that was chosen.
std::string none_declared(const RecipeAllergens& all);

/// Allergens with the ingredients that bring them, and what the book does not say.
Box allergen_box(const Recipe& recipe, const Book& book);

/// For each kind of meat the pull temperature beside the authorities' minimums; where the book does
/// not say what kind of food is cooked until a temperature, a box that says so.
std::vector<Box> safety_boxes(Sheet& sheet, const ScaledRecipe& scaled, const Book& book);

}  // namespace platewright::card
