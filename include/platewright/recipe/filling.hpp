// SPDX-License-Identifier: MIT
#pragma once
// How a content is spread over vessels or batches that are alike.

#include <vector>

#include "platewright/number/rational.hpp"
#include "platewright/number/round.hpp"

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

namespace detail {

/// Whole pieces as evenly as can be: ten over three are 4, 3 and 3. Where the content has a part of
/// a piece, the last vessel has it.
inline std::vector<FilledAlike> whole_parts(const Rational& content, const Rational& count) {
  const Rational pieces = up_to(content, 1);
  const Rational fewer = down_to(pieces / count, 1);
  const Rational with_more = pieces - fewer * count;
  const Rational missing = pieces - content;
  std::vector<FilledAlike> out;
  if (with_more > 0) out.push_back({with_more, fewer + 1});
  out.push_back({count - with_more, fewer});
  if (missing == 0) return out;
  const Rational last = out.back().content - missing;
  out.back().times -= 1;
  if (out.back().times == 0) out.pop_back();
  out.push_back({1, last});
  return out;
}

}  // namespace detail

/// `content` over as few vessels as hold it, `capacity` in one at most: in equal parts, so that all
/// cook alike, or, where it is whole pieces, with at most one piece more in some than in others.
/// Both must be above 0, and the capacity of whole pieces 1 or more.
inline Filling spread_over(const Rational& content, const Rational& capacity, bool whole_pieces) {
  Filling out{content, whole_pieces ? down_to(capacity, 1) : capacity, 1, {}};
  out.count = up_to(content / out.capacity, 1);
  out.parts = whole_pieces ? detail::whole_parts(content, out.count)
                           : std::vector<FilledAlike>{{out.count, content / out.count}};
  return out;
}

}  // namespace platewright
