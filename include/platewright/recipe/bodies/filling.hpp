// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/filling.hpp.

#include "platewright/recipe/filling.hpp"

namespace platewright {

namespace detail {

/// Whole pieces as evenly as can be: ten over three are 4, 3 and 3. Where the content has a part of
/// a piece, the last vessel has it.
PLATEWRIGHT_BODY std::vector<FilledAlike> whole_parts(const Rational& content,
                                                      const Rational& count) {
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

PLATEWRIGHT_BODY Filling spread_over(const Rational& content, const Rational& capacity,
                                     bool whole_pieces) {
  Filling out{content, whole_pieces ? down_to(capacity, 1) : capacity, 1, {}};
  out.count = up_to(content / out.capacity, 1);
  out.parts = whole_pieces ? detail::whole_parts(content, out.count)
                           : std::vector<FilledAlike>{{out.count, content / out.count}};
  return out;
}

}  // namespace platewright
