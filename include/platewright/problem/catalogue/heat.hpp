// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a roast that is to be worked out, and with the log of one.

#include <cstddef>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

/// `measured` is `a girth of 76 cm`, `weight` that of the piece.
Problem roast_shape_impossible(std::string_view measured, std::string_view weight);

Problem roast_oven_open(std::string_view why);

Problem roast_never_done(std::string_view pull, std::string_view most);

Problem roast_starts_done(std::string_view start, std::string_view pull);

Problem composition_not_meat(std::string_view what);

Problem timed_roast_unlikely(std::string_view took, std::string_view expected);

Problem timed_roast_malformed(std::string_view text);

Problem fat_not_stated(std::string_view food);

Problem fat_not_asked(std::string_view food);

Problem core_log_short(std::size_t readings);

Problem core_log_order(std::string_view before, std::string_view after);

Problem core_log_gap(std::string_view before, std::string_view after, std::string_view most);

Problem core_log_header(std::string_view found);

Problem fat_beyond_table(std::string_view found, std::string_view most);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/heat.hpp"
#endif
