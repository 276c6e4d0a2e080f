// SPDX-License-Identifier: MIT
#pragma once
// Quotation marks, brackets and braces that are opened and not closed.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "yaml/text_line.hpp"

namespace platewright::yaml {

/// A mark that is still open. Lines and columns count from 1.
struct OpenMark {
  char opened = '"';
  int line = 0;
  int column = 0;
  /// Of a quotation mark: the last line that it swallowed.
  std::string reached;
  /// Of a bracket: where another kind of bracket closes, which it does not fit.
  std::optional<std::pair<int, int>> met_at;
};

/// The first mark that its file leaves open: to the end of the file, to a line that by where it
/// begins is one of the file's own, or to a bracket of the other kind.
std::optional<OpenMark> first_open_mark(const std::vector<TextLine>& lines);

}  // namespace platewright::yaml
