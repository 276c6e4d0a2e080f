// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/events.hpp.

#include <string>

#include "platewright/problem/catalogue/events.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem event_without_time(std::string_view event) {
  return make_problem("event-no-time", in_quotes(event) + " does not say when the food is served",
                      "a date and time such as 2027-10-09 18:30",
                      "write `at: 2027-10-09 18:30` into the event");
}

PLATEWRIGHT_BODY Problem step_too_long(std::string_view days) {
  return make_problem("step-too-long", "a step of " + std::string(days) + " days",
                      "a step of a year at most", "correct the time or its unit");
}

PLATEWRIGHT_BODY Problem dish_not_for_guests(std::string_view dish, std::string_view guests,
                                             std::string_view because) {
  return make_problem(
      "dish-not-for-guests",
      in_quotes(dish) + " for " + in_quotes(guests) + ", who may not eat " + std::string(because),
      "a dish that they are known to be able to eat",
      "give them another dish; ask the guests and read every label");
}

PLATEWRIGHT_BODY Problem nothing_to_eat(std::string_view guests, std::string_view without) {
  return make_problem("nothing-to-eat",
                      "no dish of which the book can say that " + in_quotes(guests) +
                          " may eat it: they may not eat " + std::string(without),
                      "a dish on the menu without it, whose every ingredient states its allergens",
                      "add one, or complete the larder; ask the guests and read every label");
}

}  // namespace platewright::problems
