// SPDX-License-Identifier: MIT
#pragma once
// A temperature with the side of it that is safe.

#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/temperature.hpp"

namespace platewright {

/// Which way from a temperature is safe.
enum class Bound { at_least, at_most };

std::string_view name_of(Bound bound);

/// Throws Failure for a word that is none.
Bound bound_from(std::string_view text);

/// A temperature that must be reached, or must not be passed.
struct BoundTemperature {
  Temperature at = Temperature::celsius(0);
  Bound bound = Bound::at_least;
};

/// Whether food of that temperature is on the safe side.
inline bool keeps(const BoundTemperature& limit, const Temperature& food) {
  return limit.bound == Bound::at_least ? food >= limit.at : food <= limit.at;
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/bound_temperature.hpp"
#endif
