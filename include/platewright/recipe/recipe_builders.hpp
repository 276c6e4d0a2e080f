// SPDX-License-Identifier: MIT
#pragma once
// Words for writing recipes down in a program: `line("garlic", "8 cloves")`.

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "platewright/recipe/ingredient_rows.hpp"
#include "platewright/recipe/recipe.hpp"

namespace platewright::builders {

/// The program's own units, for amounts in words.
const UnitTable& unit_table();

/// `2 1/4 cups`, as a cook writes it, in the built-in units; bare cups and pints are US customary.
/// Throws Failure as `read_amount` does.
inline Amount amount(std::string_view text) {
  return read_amount(text, unit_table(), MeasuringSystem::us);
}

/// A share of the weight of other lines: `share_of(fraction(6, 100), {"water"})`.
inline WeightShare share_of(const Rational& share, std::vector<std::string> lines) {
  return {share, std::move(lines)};
}

/// One line: `line("olive oil", 2_tbsp)`.
inline RecipeLine line(std::string name, WrittenAmount amount,
                       ScalingRule scale = ScalingRule::proportional) {
  return {std::move(name), std::move(amount), {}, {}, scale};
}
/// The same in words: `line("garlic", "8 cloves")`, `line("salt", "to taste")`. Throws Failure as
/// `read_line_amount` does.
inline RecipeLine line(std::string name, const char* text,
                       ScalingRule scale = ScalingRule::proportional) {
  return line(std::move(name), read_line_amount(text, unit_table(), MeasuringSystem::us), scale);
}

/// A recipe that serves so many portions.
Recipe recipe_for(std::string name, const Rational& portions, std::vector<RecipeLine> lines);
/// A recipe that others use, and how much it makes.
Recipe recipe_making(std::string name, const Amount& makes, std::vector<RecipeLine> lines);

/// An ingredient of which the share `yield` is left after trimming; all of it where none is named.
Ingredient ingredient(std::string name, const Rational& yield = 1);
/// An ingredient with the yield of a row of the tables: a cut, produce, a grain.
template <class TableRow>
Ingredient ingredient(std::string name, const TableRow& row) requires requires {
  key_of(row);
}
{ return with_row(ingredient(std::move(name)), row); }

/// What one measure or piece of an ingredient weighs, by one's own scale.
MeasureWeight weighing(const Amount& measure, const Mass& weighs);

}  // namespace platewright::builders

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/recipe_builders.hpp"
#endif
