// SPDX-License-Identifier: MIT
#pragma once
// What a step of a recipe is, for the rule that goes with it.

#include <array>
#include <string_view>

#include "platewright/problem/body.hpp"
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
std::string_view name_of(StepKind kind);

/// Capitals do not matter. Throws Failure, with the nearest one, for a word that is none.
StepKind step_kind_from(std::string_view text);

/// Heat goes into the food: what is left over of it may not stand as it is.
bool cooks(StepKind kind);

/// The food is on the safe side of its limits while this goes on, as long as the rule is kept.
bool keeps_food(StepKind kind);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/step_kind.hpp"
#endif
