// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with an occasion when it is planned.

#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem event_without_time(std::string_view event);

Problem step_too_long(std::string_view days);

Problem dish_not_for_guests(std::string_view dish, std::string_view guests,
                            std::string_view because);

Problem nothing_to_eat(std::string_view guests, std::string_view without);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/events.hpp"
#endif
