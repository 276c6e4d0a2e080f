// SPDX-License-Identifier: MIT
#pragma once
// What is wrong with the steps of a recipe, as warnings.

#include <string>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/steps.hpp"
#include "platewright/problem/problem_list.hpp"
#include "platewright/recipe/step_words.hpp"

namespace platewright::detail {

/// `145 F (62.8 C)`: a minimum rounded up, what was reached rounded down.
std::string both_scales(const Temperature& at, Rounding rounding);

inline std::string hours_of(const Duration& time, Rounding rounding) {
  return as_short_decimal(time.in(units::hour), 1, rounding) + " h";
}

Problem step_problem(const std::string& recipe, const StepNotice& notice);

void add_step_warnings(const Recipe& recipe, const RecipeBook& book, const SafetyTable& table,
                       const std::optional<Mass>& piece_weight, ProblemList& out);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/step_warnings.hpp"
#endif
