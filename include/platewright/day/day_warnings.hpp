// SPDX-License-Identifier: MIT
#pragma once
// What a day does not have enough of, as warnings.

#include <string>
#include <string_view>

#include "platewright/day/plan_day.hpp"
#include "platewright/event/safety_warnings.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/days.hpp"
#include "platewright/problem/nearest.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// `in the hot box`.
std::string_view words_of(Space space);

/// `1 person`, `2 people of the role "cook"`.
std::string people_words(std::size_t count, const std::string& role);

/// What is missing, behind the name of the recipe, what is planned without it, and what to write.
struct NotSaidWords {
  std::string_view what;
  std::string_view meanwhile;
  std::string_view remedy;
};

NotSaidWords words_of(NotSaid what);

/// What would do for dishes that the ovens do not do for: each of it alone. `time` writes a time.
std::vector<std::string> ways_out(const OvensShort& one,
                                  std::string (*time)(const Duration&, Rounding));

/// What would do for a step that has too few people: another role where nobody has the one that it
/// asks for, since more hours of others then help nobody.
std::string way_out(const HandsShort& one, const std::vector<Person>& people);

/// A warning for all that is short or not said, each at the event or at the step. It never fails.
ProblemList day_warnings(const DayPlan& plan, const Place& event);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/day_warnings.hpp"
#endif
