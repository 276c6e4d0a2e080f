// SPDX-License-Identifier: MIT
#pragma once
// What a file holds.

#include <string_view>

namespace platewright {

/// Recipes, larders, events, tables and prices make up a book; the others are read by themselves.
enum class FileKind { recipe, larder, event, tables, prices, worksheet, trials, price_list };

/// The key by which a file says what it is.
inline std::string_view name_of(FileKind kind) {
  switch (kind) {
    case FileKind::recipe:
      return "recipe";
    case FileKind::larder:
      return "larder";
    case FileKind::event:
      return "event";
    case FileKind::tables:
      return "tables";
    case FileKind::prices:
      return "prices";
    case FileKind::worksheet:
      return "worksheet";
    case FileKind::trials:
      return "trials";
    case FileKind::price_list:
      return "price list";
  }
  return {};
}

}  // namespace platewright
