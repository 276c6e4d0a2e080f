// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/step_kind.hpp.

#include <string>
#include <vector>

#include "platewright/safety/step_kind.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view name_of(StepKind kind) {
  switch (kind) {
    case StepKind::thaw:
      return "thaw";
    case StepKind::brine:
      return "brine";
    case StepKind::marinate:
      return "marinate";
    case StepKind::dry_salt:
      return "dry-salt";
    case StepKind::out_of_the_refrigerator:
      return "out of the refrigerator";
    case StepKind::sear:
      return "sear";
    case StepKind::roast:
      return "roast";
    case StepKind::simmer:
      return "simmer";
    case StepKind::chill:
      return "chill";
    case StepKind::reheat:
      return "reheat";
    case StepKind::hold_hot:
      return "hold hot";
    case StepKind::hold_cold:
      return "hold cold";
    case StepKind::rest:
      return "rest";
    case StepKind::carve:
      return "carve";
    case StepKind::plate:
      return "plate";
    case StepKind::serve:
      return "serve";
  }
  return {};
}

PLATEWRIGHT_BODY StepKind step_kind_from(std::string_view text) {
  const std::string wanted = folded_name(text);
  std::vector<std::string> known;
  for (const StepKind kind : all_step_kinds) {
    if (name_of(kind) == wanted) return kind;
    known.emplace_back(name_of(kind));
  }
  throw Failure(problems::word_unknown("kind of step", text, known));
}

PLATEWRIGHT_BODY bool cooks(StepKind kind) {
  return kind == StepKind::sear || kind == StepKind::roast || kind == StepKind::simmer ||
         kind == StepKind::reheat;
}

PLATEWRIGHT_BODY bool keeps_food(StepKind kind) {
  return kind == StepKind::chill || kind == StepKind::reheat || kind == StepKind::hold_hot ||
         kind == StepKind::hold_cold;
}

}  // namespace platewright
