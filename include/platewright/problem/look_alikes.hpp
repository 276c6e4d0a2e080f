// SPDX-License-Identifier: MIT
#pragma once
// Names that look like others and are not the same.

#include <optional>
#include <string>
#include <string_view>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/scripts.hpp"

namespace platewright {

/// A warning of a name that has letters of two scripts in one word: with a letter that only looks
/// like the right one it is another name, with prices, yields and allergens of its own. Nothing for
/// any other name.
inline std::optional<Problem> look_alike_warning(std::string_view name) {
  const auto mixed = mixed_word(name);
  if (!mixed) return std::nullopt;
  return as_warning(problems::names_look_alike(
      name, mixed->word,
      std::string(name_of(mixed->first)) + " and of " + std::string(name_of(mixed->second))));
}

}  // namespace platewright
