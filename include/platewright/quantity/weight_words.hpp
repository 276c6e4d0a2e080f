// SPDX-License-Identifier: MIT
#pragma once
// A weight inside the wording of a problem.

#include <string>

#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

/// The weight in both systems, as the problem does not know which one its reader weighs in, each
/// rounded half up to two places: `226.8 g (8 oz)`, `4989.52 g (11 lb)`.
std::string weight_words(const Mass& mass);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/quantity/bodies/weight_words.hpp"
#endif
