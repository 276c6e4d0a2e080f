// SPDX-License-Identifier: MIT
#pragma once
// A day as it is printed.

#include <chrono>
#include <string>

#include "platewright/problem/body.hpp"

namespace platewright {

std::string two_digits(long value);

/// `2027-10-09` (ISO 8601).
std::string day_text(const std::chrono::local_days& day);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/day_text.hpp"
#endif
