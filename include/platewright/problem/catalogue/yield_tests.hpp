// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a trim test, a cooking loss test, trials, and how sure they make us.

#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem parts_above_whole(std::string_view parts, std::string_view whole,
                          std::string_view difference);

Problem parts_unaccounted(std::string_view parts, std::string_view whole,
                          std::string_view difference);

Problem part_weight_missing(std::string_view part);

Problem part_value_not_credited(std::string_view part);

Problem usable_part_missing(std::string_view cut);

Problem credits_above_cost(std::string_view credits, std::string_view cost);

Problem trials_missing();

Problem spread_too_wide(std::string_view what);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/yield_tests.hpp"
#endif
