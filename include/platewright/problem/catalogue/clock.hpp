// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with times and the zones that they are of.

#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem time_left_out(std::string_view time, std::string_view zone, std::string_view from,
                      std::string_view to);

Problem time_twice(std::string_view time, std::string_view zone, std::string_view first,
                   std::string_view second);

Problem time_offset_wrong(std::string_view time, std::string_view zone, std::string_view written,
                          std::string_view right);

Problem time_half_day(std::string_view text, std::string_view right);

Problem time_zone_missing(std::string_view found);

Problem zone_database_missing(std::string_view why);

Problem zone_database_short(std::string_view day);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/clock.hpp"
#endif
