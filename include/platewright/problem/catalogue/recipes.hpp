// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a recipe, its links to others, and what it is scaled to.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/nearest.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem portions_and_yield_differ(std::string_view recipe, std::string_view portions,
                                  std::string_view by_yield);

Problem portion_holds_bone(std::string_view recipe, std::string_view ingredient,
                           std::string_view held, std::string_view row);

Problem recipe_cycle(const std::vector<std::string>& names);

Problem recipes_too_deep(std::string_view recipe, std::size_t most);

/// Of all dishes and sub-recipes that one plan makes.
Problem plan_too_large(std::size_t most);

Problem recipe_has_no_portions(std::string_view recipe);

Problem recipe_has_no_portion_size(std::string_view recipe);

Problem recipe_has_no_pieces(std::string_view recipe);

Problem recipe_has_no_amount(std::string_view recipe);

Problem recipe_amount_unreachable(std::string_view recipe, std::string_view makes,
                                  std::string_view wanted);

Problem recipe_makes_malformed(std::string_view text,
                               std::string remedy = "write it in one of these forms");

Problem tested_on_malformed(std::string_view text);

Problem oven_step_malformed(std::string_view text);

Problem time_span_malformed(std::string_view text);

Problem step_uses_unknown(std::string_view name, const std::vector<std::string>& lines);

Problem line_not_used(std::string_view line);

Problem recipe_not_made(std::string_view recipe);

Problem portion_missing();

Problem scale_missing_factor();

Problem short_line_unusable(std::string_view line, std::string_view rule);

Problem short_in_wholes(std::string_view line, std::string_view recipe, std::string_view whole);

Problem short_malformed(std::string_view text);

Problem short_of_a_piece(std::string_view line, std::string_view piece);

Problem share_of_unknown(std::string_view name, const std::vector<std::string>& lines);

Problem largest_batch_malformed(std::string_view text);

Problem by_surface_without_pieces(std::string_view line);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/recipes.hpp"
#endif
