// SPDX-License-Identifier: MIT
#pragma once
// What whoever plans or prices an event has to know of temperatures and steps before it is served.

#include <vector>

#include "platewright/card/blocks.hpp"
#include "platewright/event/dish_notices.hpp"

namespace platewright {

/// A box for the food below its minimum and the food whose minimum is not known, and one for the
/// steps that are not safe, a line each; none where there is nothing to say. The same notices as on
/// the cards and on the client's sheet.
std::vector<Box> kitchen_notices(const std::vector<DishNotice>& notices);

}  // namespace platewright
