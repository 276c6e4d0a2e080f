// SPDX-License-Identifier: MIT
#pragma once
// Where goods are kept until they are used, and how long.

#include <optional>
#include <string_view>

#include "platewright/problem/body.hpp"

namespace platewright {

enum class Storage { dry, chilled, frozen };

/// The word that a book has for it.
std::string_view name_of(Storage storage);

/// `in the cold room`.
std::string_view where_kept(Storage storage);

/// Each is nothing where the book does not say.
struct Keeping {
  std::optional<Storage> at = std::nullopt;
  /// The most whole days from the delivery to the day of the first use.
  std::optional<int> days = std::nullopt;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/keeping.hpp"
#endif
