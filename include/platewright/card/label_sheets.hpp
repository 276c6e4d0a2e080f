// SPDX-License-Identifier: MIT
#pragma once
// What is stuck on containers and stood beside dishes.

#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/event/dish_notices.hpp"
#include "platewright/event/food_labels.hpp"

namespace platewright {

/// A label for each recipe: container, the day it is made and the day it is used by, how it is
/// kept, allergens. The true days are written in by hand.
Sheet label_sheet(const Event& event, const std::vector<FoodLabel>& labels);

/// A card for each dish, for guests to read: allergens, what is not known, and what the Food Code
/// wants told of undercooked food (3-603.11).
Sheet buffet_sheet(const Event& event, const std::vector<DishNotice>& notices);

}  // namespace platewright
