// SPDX-License-Identifier: MIT
#pragma once
// YAML text into nodes, within bounds.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "platewright/problem/problem_list.hpp"
#include "yaml/node.hpp"

namespace platewright::yaml {

/// Past one of these the answer is a problem, not a crash and not a long wait.
struct Bounds {
  std::size_t bytes = 8U << 20U;
  std::size_t nodes = 400'000;
  std::size_t depth = 24;
  std::size_t scalar_bytes = 64U << 10U;
  std::size_t lines = 1'000'000;
  std::size_t items = 5000;  ///< of one list: the lines of a recipe, the dishes of a menu
  /// Between two values: so many brackets, blanks or remarks. The parser keeps them all.
  std::size_t bytes_between = 1U << 20U;
};

/// Reads one document. Every problem found goes into `problems`, at its line and column in `file`;
/// nothing is returned where the text can't be read at all. Anchors, aliases and tags are refused;
/// so are duplicate keys, a second document, and text that is not UTF-8.
std::optional<Node> read_yaml(std::string_view text, const std::string& file, ProblemList& problems,
                              const Bounds& bounds = {});

/// Reads a whole plain file, at most `bounds.bytes` of it. Nothing is returned where it can't be
/// read: a folder, a device and a pipe are not waited for.
std::optional<std::string> read_file(const std::string& file, ProblemList& problems,
                                     const Bounds& bounds = {});

/// What a user writes for standard input.
inline constexpr std::string_view standard_input_name = "-";

/// As `read_file`, for a file that the user names: `-` is standard input. A file that is named in
/// another one is never that.
std::optional<std::string> read_named(const std::string& file, ProblemList& problems,
                                      const Bounds& bounds = {});

}  // namespace platewright::yaml
