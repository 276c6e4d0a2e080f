// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with yields, ladders and the tables they come from.

#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem stage_unknown(std::string_view found, std::string help);

Problem loss_unknown(std::string_view found, std::string help);

Problem yield_not_positive(std::string_view found);

/// Both as they are printed, in per cent; `missing_sign` where the figure looks like a percentage
/// whose sign was forgotten.
Problem yield_too_large(std::string_view found, std::string_view most, bool missing_sign);

Problem meat_yield_above_one(std::string_view found);

Problem spread_without_samples(std::string_view deviation);

Problem spread_upside_down(std::string_view low, std::string_view high);

Problem ladder_empty();

Problem stages_out_of_order(std::string_view from, std::string_view to);

Problem rungs_not_joined(std::string_view ends, std::string_view begins);

Problem loss_held_twice(std::string_view loss, std::string_view first, std::string_view second);

/// `rungs` are those that would reach it; empty where no ladder is written.
Problem stage_missing(std::string_view wanted, std::string_view stages,
                      std::string_view rungs = {});

Problem cut_unknown(std::string_view name, std::string help);

Problem produce_unknown(std::string_view name, std::string help);

Problem grain_unknown(std::string_view name, std::string help);

/// Where the name may be of any of the tables.
Problem yield_unknown(std::string_view name, std::string help);

Problem yield_name_twice(std::string_view name);

Problem yield_name_ambiguous(std::string_view name, std::string_view rows);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/yields.hpp"
#endif
