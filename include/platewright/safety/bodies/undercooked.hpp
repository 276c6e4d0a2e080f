// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/undercooked.hpp.

#include <vector>

#include "platewright/safety/undercooked.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view name_of(Undercooked rule) {
  switch (rule) {
    case Undercooked::never:
      return "never";
    case Undercooked::advised:
      return "told";
    case Undercooked::held_or_advised:
      return "held or told";
  }
  return {};
}

PLATEWRIGHT_BODY Undercooked undercooked_from(std::string_view text) {
  std::vector<std::string> known;
  for (const Undercooked rule :
       {Undercooked::never, Undercooked::advised, Undercooked::held_or_advised}) {
    if (name_of(rule) == text) return rule;
    known.emplace_back(name_of(rule));
  }
  throw Failure(problems::word_unknown("rule for undercooked food", text, known));
}

}  // namespace platewright
