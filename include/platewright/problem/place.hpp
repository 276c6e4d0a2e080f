// SPDX-License-Identifier: MIT
#pragma once
// Where something stands: in a file, and in the book that the file is part of.

#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"

namespace platewright {

/// A position in what the user wrote. `line` and `column` count from 1; 0 means "not known".
/// `path` is the way through the book, as in `recipe "lamb leg" > line 3 > amount`.
struct Place {
  std::string file;
  int line = 0;
  int column = 0;
  std::string path;

  friend bool operator==(const Place&, const Place&) = default;
};

/// The same place one step further down the book.
Place inside(Place place, std::string_view step);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/place.hpp"
#endif
