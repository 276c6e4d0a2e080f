// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/bound_temperature.hpp.

#include "platewright/safety/bound_temperature.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view name_of(Bound bound) {
  switch (bound) {
    case Bound::at_least:
      return "at least";
    case Bound::at_most:
      return "at most";
  }
  return {};
}

PLATEWRIGHT_BODY Bound bound_from(std::string_view text) {
  for (const Bound bound : {Bound::at_least, Bound::at_most}) {
    if (name_of(bound) == text) return bound;
  }
  throw Failure(problems::word_unknown("bound", text, {"at least", "at most"}));
}

}  // namespace platewright
