// SPDX-License-Identifier: MIT
#pragma once
// What a file is, by its leading key.

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "platewright/book/file_kind.hpp"
#include "platewright/problem/problem_list.hpp"
#include "yaml/node.hpp"

namespace platewright::reading {

/// The kinds of files that make up a book.
inline constexpr std::array<FileKind, 5> book_kinds{
    FileKind::recipe, FileKind::larder, FileKind::event, FileKind::tables, FileKind::prices};
/// The kinds that are read by themselves.
inline constexpr std::array<FileKind, 3> single_kinds{FileKind::worksheet, FileKind::trials,
                                                      FileKind::price_list};

/// The first of `kinds` that the map has as a key; nothing where it has none, or is no map.
template <class Kinds>
std::optional<FileKind> kind_among(const Kinds& kinds, const yaml::Node& root) {
  for (const FileKind kind : kinds) {
    for (const auto& [key, value] : root.entries) {
      if (key.text == name_of(kind)) return kind;
    }
  }
  return std::nullopt;
}

/// Whether a line of the text is `KIND:`, so that it says what the file is.
bool says_its_kind(std::string_view text);

/// Whether the file can be one of ours. One that says nothing of the kind is reported, and not a
/// word of it is shown: it may be any file at all. An empty one and one that is no text are left to
/// the reader of YAML.
bool may_be_ours(const std::string& text, const std::string& file, ProblemList& problems);

}  // namespace platewright::reading
