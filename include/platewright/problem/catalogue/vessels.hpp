// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with the vessel that a recipe names.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/nearest.hpp"
#include "platewright/problem/plural.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

/// `content` is what the recipe counts: `leg`, `portion`, `batch`.
Problem vessel_malformed(std::string_view text, std::string_view content);

Problem vessel_below_a_piece(std::string_view vessel, std::string_view piece);

/// `known` are names of the table, where the vessel may be one of them.
Problem vessel_size_unknown(std::string_view vessel, std::string_view recipe,
                            std::string_view content, const std::vector<std::string>& known = {});

Problem vessel_without_volume(std::string_view vessel, const std::vector<std::string>& known);

Problem vessel_missing(std::string_view line);

Problem vessel_too_small(std::string_view vessel);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/vessels.hpp"
#endif
