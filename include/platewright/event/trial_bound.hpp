// SPDX-License-Identifier: MIT
#pragma once
// How often an event may be planned anew to answer one question.

#include <algorithm>
#include <cstddef>
#include <string>

#include "platewright/event/occasion.hpp"
#include "platewright/problem/catalogue/what_if.hpp"

namespace platewright {

/// What of an event is gone through when it is planned: its lines, guests and terms, and the lines
/// of all that is made for it.
inline std::size_t size_of_plan(const Event& event, const Production& production) {
  std::size_t out = event.guests.size() + event.menu.size() + event.terms.labour.size() +
                    event.terms.extras.size();
  for (const DishPlan& dish : production.dishes) out += dish.scaled.lines.size() + 1;
  for (const SubRecipePlan& made : production.sub_recipes) out += made.scaled.lines.size() + 1;
  return out;
}

inline std::size_t size_of_plan(const Occasion& occasion) {
  return size_of_plan(occasion.event,
                      plan_production(occasion.event, occasion.book, occasion.prices));
}

/// The more there is to plan, the fewer plans, so that every answer takes some seconds at most:
/// half a million lines gone through in all, and at most ten thousand plans.
inline std::size_t most_trials(std::size_t size_of_one) {
  constexpr std::size_t lines_in_all = 500'000;
  return std::clamp<std::size_t>(lines_in_all / std::max<std::size_t>(1, size_of_one), 4, 10'000);
}

/// Throws Failure for a question that asks for more.
inline void check_trials(const std::string& question, std::size_t trials, std::size_t size_of_one) {
  const std::size_t most = most_trials(size_of_one);
  if (trials <= most) return;
  throw Failure(problems::too_many_trials(question, std::to_string(trials), std::to_string(most),
                                          std::to_string(size_of_one)));
}

}  // namespace platewright
