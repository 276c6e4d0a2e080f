// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a number as it is typed.

#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem number_missing(std::string_view text);

Problem number_malformed(std::string_view text, std::string why);

Problem number_has_comma(std::string_view text);

Problem number_signed(std::string_view text);

Problem number_exponent(std::string_view text);

Problem number_zero_denominator(std::string_view text);

Problem number_too_long(std::string_view text);

Problem number_too_fine();

Problem number_not_finite();

Problem number_not_positive(std::string_view what, std::string_view found);

Problem share_out_of_range(std::string_view what, std::string_view found, std::string_view range);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/numbers.hpp"
#endif
