// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/declared_allergens.hpp.

#include <algorithm>

#include "platewright/recipe/declared_allergens.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY bool is_listed(const std::string& key, const AllergenTable& table,
                                AllergenLaw law) {
  const std::vector<Allergen> rows = table.rows_of(key);
  if (rows.empty() || law == AllergenLaw::both) return true;
  return std::any_of(rows.begin(), rows.end(),
                     [&](const Allergen& row) { return row.scheme == name_of(law); });
}

/// What comes with it and is listed.
PLATEWRIGHT_BODY std::vector<std::string> listed_kinds(const std::string& key,
                                                       const AllergenTable& table) {
  std::vector<std::string> out;
  for (const std::string& implied : table.with_implied({key})) {
    if (implied != key && is_listed(implied, table, table.law())) out.push_back(implied);
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY std::vector<DeclaredAllergen> declared(const std::vector<AllergenFound>& found,
                                                        const AllergenTable& table) {
  std::vector<DeclaredAllergen> out;
  for (const AllergenFound& one : found) {
    const std::vector<std::string> kinds = detail::listed_kinds(one.key, table);
    if (kinds.empty() && !detail::is_listed(one.key, table, table.law())) continue;
    DeclaredAllergen line{one.key, kinds, {}};
    for (const std::string& ingredient : one.ingredients) {
      const bool named = std::any_of(found.begin(), found.end(), [&](const AllergenFound& other) {
        const auto of = detail::listed_kinds(other.key, table);
        const auto& by = other.ingredients;
        return std::find(of.begin(), of.end(), one.key) != of.end() &&
               std::find(by.begin(), by.end(), ingredient) != by.end();
      });
      if (!named) line.ingredients.push_back(ingredient);
    }
    if (!line.ingredients.empty()) out.push_back(std::move(line));
  }
  return out;
}

PLATEWRIGHT_BODY DeclaredAllergens declared(const RecipeAllergens& allergens,
                                            const AllergenTable& table) {
  return {declared(allergens.found, table), declared(allergens.may_contain, table),
          allergens.not_stated};
}

}  // namespace platewright
