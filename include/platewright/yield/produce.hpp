// SPDX-License-Identifier: MIT
#pragma once
// A row of the table of produce.

#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/yield/ladder.hpp"

namespace platewright {

/// A vegetable, fruit, herb or other food that is trimmed in one stated way. Published yields of
/// one food differ because the trim does, so that each way is a row with a name of its own.
struct Produce {
  /// As in `celery, trimmed`; the key of the row.
  std::string name;
  /// Other names for the same row.
  std::vector<std::string> names;
  /// What is taken off, as in `root end, leaves and tops off`.
  std::string trim;
  /// Edible portion over as purchased, by weight.
  Rational yield = 1;
  Source source;
};

inline std::string key_of(const Produce& produce) {
  return produce.name;
}
inline std::vector<std::string> other_names_of(const Produce& produce) {
  return produce.names;
}

/// The food without its trim, as in `celery`: what stands before the first comma of the row's name.
inline std::string goods_of(const Produce& produce) {
  return produce.name.substr(0, produce.name.find(','));
}

/// One rung, from purchased to trimmed. Throws Failure for a yield of 0 or less.
Ladder ladder_of(const Produce& produce);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/produce.hpp"
#endif
