// SPDX-License-Identifier: MIT
#pragma once
// A file of a book that was read before it is its turn.

#include <cstddef>
#include <memory>
#include <string>
#include <vector>

#include "yaml/node.hpp"

namespace platewright::reading {

struct FetchedFile {
  std::size_t bytes = 0;
  std::size_t values = 0;
  /// Null for a file of which there is anything to say, which depends on what was said before: it
  /// is read in its turn.
  std::shared_ptr<const yaml::Node> tree = {};
};

/// Reads a file that another one names. Changes nothing, so that many can be read at once.
FetchedFile fetch_file(const std::string& file);

/// How many values there are in it.
std::size_t values_in(const yaml::Node& node);

/// What a file names under `with`, as far as it can be told.
std::vector<std::string> names_with(const yaml::Node& root);

}  // namespace platewright::reading
