// SPDX-License-Identifier: MIT
#pragma once
// A day as a picture, a line for each oven and each person.

#include <string>
#include <vector>

#include "platewright/card/blocks.hpp"
#include "platewright/day/day_plan.hpp"

namespace platewright {

/// By oven and by person, from the last pause of four hours on, 24 hours at most. What was done
/// before it is not drawn. As a table the hours are signs.
Picture day_picture(const DayPlan& day);

/// `cook 2`; `head cook` where there is one alone.
std::string person_text(const Person& person);

}  // namespace platewright
