// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with temperatures and times of cooking, and what a book leaves unsaid of them.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem safety_not_stated(const std::vector<std::string>& ingredients);

Problem inside_temperature_impossible(std::string_view text);

Problem inside_above_oven(std::string_view text);

Problem oven_temperature_unusual(std::string_view text);

Problem rest_too_long(std::string_view text, std::string_view most, std::string_view source);

Problem below_the_minimum(std::string_view recipe, std::string_view food, std::string_view pull,
                          std::string_view minimum, std::string remedy);

Problem stands_too_long(std::string_view recipe, std::string_view longest, std::string_view most,
                        std::string_view source);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/safety.hpp"
#endif
