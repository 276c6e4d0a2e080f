// SPDX-License-Identifier: MIT
#pragma once
// How often an event may be planned anew to answer one question.

#include <cstddef>
#include <string>

#include "platewright/event/occasion.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/what_if.hpp"

namespace platewright {

/// What of an event is gone through when it is planned: its lines, guests and terms, and the lines
/// of all that is made for it.
std::size_t size_of_plan(const Event& event, const Production& production);

std::size_t size_of_plan(const Occasion& occasion);

/// The more there is to plan, the fewer plans, so that every answer takes some seconds at most:
/// half a million lines gone through in all, and at most ten thousand plans.
std::size_t most_trials(std::size_t size_of_one);

/// Throws Failure for a question that asks for more.
void check_trials(const std::string& question, std::size_t trials, std::size_t size_of_one);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/trial_bound.hpp"
#endif
