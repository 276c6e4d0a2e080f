// SPDX-License-Identifier: MIT
#pragma once
// How a content is spread over vessels or batches that are alike.

#include <vector>

#include "platewright/number/rational.hpp"
#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// `times` vessels (or batches) with `content` in each.
struct FilledAlike {
  Rational times = 1;
  Rational content = 1;

  friend bool operator==(const FilledAlike&, const FilledAlike&) = default;
};

/// The vessels or batches that a content fills. They hold the whole of it, one fewer would not, and
/// the fullest holds no more than `capacity`. Counted in pieces, portions or tested batches.
struct Filling {
  Rational content = 1;
  Rational capacity = 1;                  ///< the most that goes into one
  Rational count = 1;                     ///< whole vessels
  std::vector<FilledAlike> parts = {{}};  ///< the fullest first; their times add up to the count

  const FilledAlike& fullest() const { return parts.front(); }

  friend bool operator==(const Filling&, const Filling&) = default;
};

/// `content` over as few vessels as hold it, `capacity` in one at most: in equal parts, so that all
/// cook alike, or, where it is whole pieces, with at most one piece more in some than in others.
/// Both must be above 0, and the capacity of whole pieces 1 or more.
Filling spread_over(const Rational& content, const Rational& capacity, bool whole_pieces);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/filling.hpp"
#endif
