// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/look_alikes.hpp.

#include <string>

#include "platewright/problem/look_alikes.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Problem> look_alike_warning(std::string_view name) {
  const auto mixed = mixed_word(name);
  if (!mixed) return std::nullopt;
  return as_warning(problems::names_look_alike(
      name, mixed->word,
      std::string(name_of(mixed->first)) + " and of " + std::string(name_of(mixed->second))));
}

}  // namespace platewright
