// SPDX-License-Identifier: MIT
#pragma once
// Recipes that are made of each other: in no circle, and not too deep.

#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/recipe/recipe_book.hpp"

namespace platewright {

/// How many recipes may stand below each other, each made of the next. A stock in a sauce in a
/// filling in a pie is four; below this bound whatever walks down a book may call itself.
inline constexpr std::size_t most_levels = 100;

/// How many lines may be kept of all that is made, for one plan or its cost: so many are a thousand
/// recipes and more, and what is worked out of each takes thirteen thousand bytes in an order.
inline constexpr std::size_t most_plan_lines = 20'000;

/// A circle of recipes that use each other, first name repeated at the end; nothing where there is
/// none.
std::optional<std::vector<std::string>> find_cycle(const RecipeBook& book);

/// Throws Failure where recipes below those of these names use each other in a circle, or stand
/// more than `most_levels` below each other. A name that is no recipe's has nothing below it.
void check_nesting(const RecipeBook& book, const std::vector<std::string>& names);

/// The same for every recipe of the book.
void check_nesting(const RecipeBook& book);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/nesting.hpp"
#endif
