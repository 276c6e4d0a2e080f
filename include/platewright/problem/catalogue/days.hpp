// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a kitchen's ovens and hours, and with a day that is to be cooked in it.

#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem pan_space_malformed(std::string_view text);

Problem hours_malformed(std::string_view text);

Problem oven_range_backwards(std::string_view from, std::string_view to);

Problem count_too_large(std::string_view what, std::string_view found);

Problem kitchen_not_said();

Problem ovens_short(std::string_view recipes, std::string_view from, std::string_view until,
                    bool looked_at_all, std::string remedy);

Problem hands_short(std::string_view step, std::string_view recipe, std::string_view from,
                    std::string_view until, std::string_view wanted, std::string_view free,
                    std::string remedy);

Problem space_short(std::string_view space, std::string_view recipes, std::string_view from,
                    std::string_view until, std::string_view wanted, std::string_view there);

Problem day_not_said(std::string_view recipe, std::string_view what, std::string_view meanwhile,
                     std::string remedy);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/days.hpp"
#endif
