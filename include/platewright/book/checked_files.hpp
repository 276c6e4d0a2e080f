// SPDX-License-Identifier: MIT
#pragma once
// What a check has read.

#include <string>
#include <vector>

#include "platewright/book/file_kind.hpp"

namespace platewright {

/// A file that no book holds and that is read by itself: a worksheet, trials, a supplier's list.
struct SingleFile {
  std::string file;
  FileKind kind;
  bool in_order = false;
};

struct CheckedFiles {
  std::vector<std::string> files;  ///< all that were read, those that others name included
  std::vector<SingleFile> single;
};

}  // namespace platewright
