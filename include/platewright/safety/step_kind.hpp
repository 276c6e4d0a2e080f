// SPDX-License-Identifier: MIT
#pragma once
// What a step of a recipe is, for the rule that goes with it.

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/folded_name.hpp"

namespace platewright {

/// What is done with the food. A step that does not say it has no kind: none is guessed from its
/// words.
enum class StepKind {
  thaw,
  brine,
  marinate,
  dry_salt,
  out_of_the_refrigerator,  ///< stands before it is cooked
  sear,
  roast,
  simmer,
  chill,
  reheat,
  hold_hot,
  hold_cold,
  rest,
  carve,
  plate,
  serve,
};

inline constexpr std::array all_step_kinds{StepKind::thaw,
                                           StepKind::brine,
                                           StepKind::marinate,
                                           StepKind::dry_salt,
                                           StepKind::out_of_the_refrigerator,
                                           StepKind::sear,
                                           StepKind::roast,
                                           StepKind::simmer,
                                           StepKind::chill,
                                           StepKind::reheat,
                                           StepKind::hold_hot,
                                           StepKind::hold_cold,
                                           StepKind::rest,
                                           StepKind::carve,
                                           StepKind::plate,
                                           StepKind::serve};

/// What a book and a sheet call it.
inline std::string_view name_of(StepKind kind) {
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

/// Capitals do not matter. Throws Failure, with the nearest one, for a word that is none.
inline StepKind step_kind_from(std::string_view text) {
  const std::string wanted = folded_name(text);
  std::vector<std::string> known;
  for (const StepKind kind : all_step_kinds) {
    if (name_of(kind) == wanted) return kind;
    known.emplace_back(name_of(kind));
  }
  throw Failure(problems::word_unknown("kind of step", text, known));
}

/// Heat goes into the food: what is left over of it may not stand as it is.
inline bool cooks(StepKind kind) {
  return kind == StepKind::sear || kind == StepKind::roast || kind == StepKind::simmer ||
         kind == StepKind::reheat;
}

/// The food is on the safe side of its limits while this goes on, as long as the rule is kept.
inline bool keeps_food(StepKind kind) {
  return kind == StepKind::chill || kind == StepKind::reheat || kind == StepKind::hold_hot ||
         kind == StepKind::hold_cold;
}

}  // namespace platewright
