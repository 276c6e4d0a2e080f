// SPDX-License-Identifier: MIT
#pragma once
// A row of the table of grains.

#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/yield/ladder.hpp"

namespace platewright {

/// A grain, pasta or dried pulse, which takes up water as it cooks.
struct Grain {
  std::string name;
  /// Other names for the same row.
  std::vector<std::string> names;
  /// Cooked weight over dry weight; above 1.
  Rational yield = 1;
  Source source;
  /// What the cook should know, as in `drained`.
  std::string note;
};

inline std::string key_of(const Grain& grain) {
  return grain.name;
}
inline std::vector<std::string> other_names_of(const Grain& grain) {
  return grain.names;
}

/// One rung, from purchased to cooked. Throws Failure for a yield of 0 or less.
Ladder ladder_of(const Grain& grain);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/grain.hpp"
#endif
