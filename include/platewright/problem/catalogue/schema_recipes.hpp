// SPDX-License-Identifier: MIT
#pragma once
// What is wrong with a recipe of schema.org that is taken in.

#include <cstddef>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/plural.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem schema_recipe_missing(std::size_t count);

Problem schema_line_unread(std::string_view line);

Problem schema_name_unmatched(std::string_view name);

Problem schema_yield_unread(std::string_view written);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/schema_recipes.hpp"
#endif
