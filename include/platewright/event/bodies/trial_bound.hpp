// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/trial_bound.hpp.

#include <algorithm>

#include "platewright/event/trial_bound.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::size_t size_of_plan(const Event& event, const Production& production) {
  std::size_t out = event.guests.size() + event.menu.size() + event.terms.labour.size() +
                    event.terms.extras.size();
  for (const DishPlan& dish : production.dishes) out += dish.scaled.lines.size() + 1;
  for (const SubRecipePlan& made : production.sub_recipes) out += made.scaled.lines.size() + 1;
  return out;
}

PLATEWRIGHT_BODY std::size_t size_of_plan(const Occasion& occasion) {
  return size_of_plan(occasion.event,
                      plan_production(occasion.event, occasion.book, occasion.prices));
}

PLATEWRIGHT_BODY std::size_t most_trials(std::size_t size_of_one) {
  constexpr std::size_t lines_in_all = 500'000;
  return std::clamp<std::size_t>(lines_in_all / std::max<std::size_t>(1, size_of_one), 4, 10'000);
}

PLATEWRIGHT_BODY void check_trials(const std::string& question, std::size_t trials,
                                   std::size_t size_of_one) {
  const std::size_t most = most_trials(size_of_one);
  if (trials <= most) return;
  throw Failure(problems::too_many_trials(question, std::to_string(trials), std::to_string(most),
                                          std::to_string(size_of_one)));
}

}  // namespace platewright
