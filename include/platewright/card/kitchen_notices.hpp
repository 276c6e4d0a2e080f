#pragma once
// What whoever plans or prices an event has to know of temperatures before it is served.

#include <optional>
#include <vector>

#include "platewright/card/blocks.hpp"
#include "platewright/event/dish_notices.hpp"

namespace platewright {

/// The food below its minimum and the food whose minimum is not known, a line each; nothing where
/// there is none. The same notices as on the cards and on the client's sheet.
std::optional<Box> kitchen_notices(const std::vector<DishNotice>& notices);

}  // namespace platewright
