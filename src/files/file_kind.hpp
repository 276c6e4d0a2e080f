#pragma once
// What a file is, by its leading key.

#include <array>
#include <optional>

#include "platewright/book/file_kind.hpp"
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

}  // namespace platewright::reading
