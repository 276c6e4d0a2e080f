// SPDX-License-Identifier: MIT
#pragma once
// Where goods are kept until they are used, and how long.

#include <optional>
#include <string_view>

namespace platewright {

enum class Storage { dry, chilled, frozen };

/// The word that a book has for it.
inline std::string_view name_of(Storage storage) {
  switch (storage) {
    case Storage::dry:
      return "dry";
    case Storage::chilled:
      return "chilled";
    case Storage::frozen:
      return "frozen";
  }
  return {};
}

/// `in the cold room`.
inline std::string_view where_kept(Storage storage) {
  switch (storage) {
    case Storage::dry:
      return "in the dry store";
    case Storage::chilled:
      return "in the cold room";
    case Storage::frozen:
      return "in the freezer";
  }
  return {};
}

/// Each is nothing where the book does not say.
struct Keeping {
  std::optional<Storage> at = std::nullopt;
  /// The most whole days from the delivery to the day of the first use.
  std::optional<int> days = std::nullopt;
};

}  // namespace platewright
