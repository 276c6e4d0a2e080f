// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/event_plan.hpp.

#include <utility>

#include "platewright/event/event_plan.hpp"

namespace platewright {

PLATEWRIGHT_BODY EventPlan::EventPlan(Occasion occasion)
    : occasion_(std::make_shared<const Occasion>(std::move(occasion))),
      production_(plan_production(occasion_->event, occasion_->book, occasion_->prices)) {}

PLATEWRIGHT_BODY Timeline EventPlan::timeline(const SafetyTable& safety) const {
  return make_timeline(event(), production_, order(), safety);
}

}  // namespace platewright
