// SPDX-License-Identifier: MIT
#pragma once
// Pounds and ounces that were read, or written, as a decimal of a pound.

#include <optional>
#include <string>

#include "platewright/number/round.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/units.hpp"
#include "platewright/worksheet/figure.hpp"

namespace platewright::detail {

struct MisreadWeight {
  Figure weight;
  std::string what;
};

/// `15 lb 6 oz` as 15.6 lb, `15 lb 10 oz` as 15.10 lb. Nothing for whole pounds, less than a pound,
/// parts of an ounce and what is no weight.
std::optional<MisreadWeight> misread(const Figure& figure);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/detail/misread_weights.hpp"
#endif
