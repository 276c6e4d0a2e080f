// SPDX-License-Identifier: MIT
#pragma once
// What a new folder begins with.

#include <vector>

#include "platewright/book/file_kind.hpp"

namespace platewright::cli {

struct StarterFile {
  const char* name;
  FileKind kind;
  const char* about;  ///< in a few words
  const char* text;
};

/// An event with its recipes, larder, prices and kitchen, plain and full of remarks for a cook.
const std::vector<StarterFile>& starter_event();

}  // namespace platewright::cli
