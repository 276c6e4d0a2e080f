#pragma once
// What a file is, by its leading key.

#include <array>
#include <string>
#include <string_view>

#include "yaml/node.hpp"

namespace platewright::reading {

/// The kinds of files that make up a book.
inline constexpr std::array<std::string_view, 5> book_kinds{"recipe", "larder", "event", "tables",
                                                            "prices"};
/// The kinds that are read by themselves.
inline constexpr std::array<std::string_view, 3> single_kinds{"worksheet", "trials", "price list"};

/// The first of `kinds` that the map has as a key; empty where it has none, or is no map.
template <class Kinds>
std::string kind_among(const Kinds& kinds, const yaml::Node& root) {
  for (const std::string_view kind : kinds) {
    for (const auto& [key, value] : root.entries) {
      if (key.text == kind) return std::string(kind);
    }
  }
  return {};
}

}  // namespace platewright::reading
