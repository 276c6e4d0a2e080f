// SPDX-License-Identifier: MIT
#pragma once
// What a recipe or a larder says in two ways that can't both be meant.

#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem tested_on_differs(std::string_view line, std::string_view written, std::string_view tested);

Problem brine_above_saturation(std::string_view salt, std::string_view share);

Problem step_beyond_date_mark(std::string_view days, std::string_view most,
                              std::string_view source);

Problem yield_of_another_method(std::string_view cut, std::string_view row,
                                std::string_view method);

Problem piece_price_bare(std::string_view price, std::string_view piece);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/contradictions.hpp"
#endif
