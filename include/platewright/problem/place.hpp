// SPDX-License-Identifier: MIT
#pragma once
// Where something stands: in a file, and in the book that the file is part of.

#include <string>
#include <string_view>

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
inline Place inside(Place place, std::string_view step) {
  if (!place.path.empty()) place.path += " > ";
  place.path += step;
  return place;
}

}  // namespace platewright
