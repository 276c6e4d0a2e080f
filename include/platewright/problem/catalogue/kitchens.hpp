// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with the measures that a kitchen is said to own.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/nearest.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem kitchen_measure_unusable(std::string_view unit, std::string why);

Problem kitchen_empty();

Problem kitchen_entry_malformed(std::string_view text);

Problem rounding_unknown(std::string_view text, const std::vector<std::string>& known);

Problem rounding_other_system(std::string_view policy, std::string_view system);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/kitchens.hpp"
#endif
