#pragma once
// What can be wrong with an occasion when it is planned.

#include <string>
#include <string_view>

#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

inline Problem event_without_time(std::string_view event) {
  return make_problem("event-no-time", in_quotes(event) + " does not say when the food is served",
                      "a date and time such as 2027-10-09 18:30",
                      "write `at: 2027-10-09 18:30` into the event");
}

inline Problem step_too_long(std::string_view days) {
  return make_problem("step-too-long", "a step of " + std::string(days) + " days",
                      "a step of a year at most", "correct the time or its unit");
}

}  // namespace platewright::problems
