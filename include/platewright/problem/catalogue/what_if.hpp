// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a question of the kind "what if".

#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem change_malformed(std::string_view text, std::string_view example);

Problem change_of_a_piece(std::string_view ingredient, std::string_view unit);

Problem swap_of_nothing(std::string_view name);

Problem budget_without_cut(std::string_view dish);

Problem draws_out_of_range(std::string_view found);

Problem too_many_draws(const std::string& draws, const std::string& costs);

Problem too_many_trials(const std::string& question, const std::string& trials,
                        const std::string& most, const std::string& lines);

Problem guests_of_several_events(std::string_view events);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/what_if.hpp"
#endif
