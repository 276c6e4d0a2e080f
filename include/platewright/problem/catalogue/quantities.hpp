// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a unit, an amount or a conversion.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/nearest.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem unit_unknown(std::string_view unit, const std::vector<std::string>& known);

Problem unit_ambiguous(std::string_view unit, std::string choices);

Problem units_do_not_mix(std::string_view left, std::string_view left_dimension,
                         std::string_view right, std::string_view right_dimension);

Problem wrong_dimension(std::string_view amount, std::string_view found, std::string_view wanted);

Problem density_missing(std::string_view ingredient, std::string_view from, std::string_view to);

Problem piece_weight_missing(std::string_view ingredient, std::string_view kind,
                             std::string_view known);

Problem amount_malformed(std::string_view text, std::string why);

Problem temperature_malformed(std::string_view text);

Problem system_unknown(std::string_view text);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/quantities.hpp"
#endif
