// SPDX-License-Identifier: MIT
#pragma once
// Which rows of cuts may stand for one another, and which of them buys the most.

#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/folded_name.hpp"
#include "platewright/yield/cut.hpp"

namespace platewright {

/// How the row is cooked, each way by itself: `broiled or grilled` is two.
std::vector<std::string> methods_of(const Cut& cut);

/// Whether the two share a way of cooking; two rows that name none do.
bool cooked_alike(const Cut& left, const Cut& right);

/// Whether the two are of the same goods as purchased and serve the same of them: meat that was
/// picked off without its skin is not what meat and skin are.
bool serve_alike(const Cut& left, const Cut& right);

/// Whether `left` buys more for the same plates: a row that takes the bone out comes before one
/// that does not, then the lower yield.
bool is_more_careful(const Cut& left, const Cut& right);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/cuts_alike.hpp"
#endif
