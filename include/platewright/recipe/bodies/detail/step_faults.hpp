// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/detail/step_faults.hpp.

#include <algorithm>
#include <utility>

#include "platewright/recipe/detail/step_faults.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY void StepFaults::check_place(const std::vector<StepRule>& rules) {
  if (!control_.where || !place_is_unknown(rules, control_.kind, *control_.where)) return;
  const auto first = std::find_if(rules.begin(), rules.end(), [&](const StepRule& rule) {
    return rule.step == control_.kind && rule.demand == StepDemand::never;
  });
  StepRule rule;
  if (first != rules.end()) rule = *first;
  add(StepFault::place, rule);
}

PLATEWRIGHT_BODY void StepFaults::check(const StepRule& rule, const std::vector<StepRule>& rules) {
  switch (rule.demand) {
    case StepDemand::never:
      add(StepFault::place, rule);
      break;
    case StepDemand::stands_at:
      if (control_.at && rule.temperature && !keeps(*rule.temperature, *control_.at)) {
        add(StepFault::temperature, rule).at = control_.at;
      }
      check_length(rule);
      break;
    case StepDemand::reaches:
      if (rule.temperature) check_reached(rule, is_last(rule, rules));
      break;
    case StepDemand::lasts:
      check_length(rule);
      break;
    case StepDemand::waits:
      if (step_.takes && rule.within && step_.takes->least < *rule.within) {
        add(StepFault::too_short, rule).time = step_.takes->least;
      }
      break;
    case StepDemand::dated:  // counted from day to day, by the timeline
    case StepDemand::told:
      break;
  }
}

PLATEWRIGHT_BODY void StepFaults::check_thawing(const StepThawing& thawing) {
  const auto time = thawing.time();
  if (!time || !step_.takes || step_.takes->least >= time->least) return;
  StepRule rule;
  rule.step = control_.kind;
  rule.demand = StepDemand::waits;
  rule.within = time->least;
  rule.source = thawing.rate.source;
  rule.row = thawing.rate.row;
  StepNotice& notice = add(StepFault::too_short, rule);
  notice.time = step_.takes->least;
  notice.thawing = thawing;
}

PLATEWRIGHT_BODY StepNotice& StepFaults::add(StepFault fault, const StepRule& rule) {
  StepNotice notice;
  notice.fault = fault;
  notice.number = number_;
  notice.kind = control_.kind;
  notice.rule = rule;
  notice.where = control_.where;
  notice.place = step_.place;
  out_.push_back(std::move(notice));
  return out_.back();
}

PLATEWRIGHT_BODY void StepFaults::check_length(const StepRule& rule) {
  if (!rule.within || !step_.takes || step_.takes->most <= *rule.within) return;
  add(StepFault::time, rule).time = step_.takes->most;
}

PLATEWRIGHT_BODY bool StepFaults::is_last(const StepRule& rule,
                                          const std::vector<StepRule>& rules) {
  return std::none_of(rules.begin(), rules.end(), [&](const StepRule& other) {
    return other.demand == StepDemand::reaches && other.temperature &&
           other.temperature->bound == rule.temperature->bound &&
           other.temperature->at != rule.temperature->at &&
           keeps(*rule.temperature, other.temperature->at);
  });
}

PLATEWRIGHT_BODY void StepFaults::check_reached(const StepRule& rule, bool last_mark) {
  if (control_.reaches.empty()) {
    if (last_mark) check_length(rule);
    return;
  }
  const auto there = std::find_if(
      control_.reaches.begin(), control_.reaches.end(),
      [&](const ReachedTemperature& mark) { return keeps(*rule.temperature, mark.at); });
  if (there == control_.reaches.end() || is_left_again(*rule.temperature)) {
    add(StepFault::temperature, rule).at = control_.reaches.back().at;
    return;
  }
  const std::optional<Duration> time = time_of(*there);
  if (!rule.within || !time || *time <= *rule.within) return;
  const bool passed_on_the_way = !last_mark && there == control_.reaches.begin() &&
                                 control_.reaches.size() == 1 && there->at != rule.temperature->at;
  if (passed_on_the_way) return;
  StepNotice& notice = add(StepFault::time, rule);
  notice.at = there->at;
  notice.time = time;
}

PLATEWRIGHT_BODY bool StepFaults::is_left_again(const BoundTemperature& limit) const {
  return limit.bound == Bound::at_most && !keeps(limit, control_.reaches.back().at);
}

PLATEWRIGHT_BODY std::optional<Duration> StepFaults::time_of(const ReachedTemperature& mark) const {
  if (mark.in || !step_.takes) return mark.in;
  return step_.takes->most;
}

PLATEWRIGHT_BODY bool is_used(const MethodStep& step, const std::string& name) {
  return std::find(step.uses.begin(), step.uses.end(), name) != step.uses.end();
}

PLATEWRIGHT_BODY void check_marinade(const Recipe& recipe, std::size_t at, const StepRule& rule,
                                     const RecipeBook& book, std::vector<StepNotice>& out) {
  const StepKind kind = recipe.steps[at].control->kind;
  const bool bath = kind == StepKind::marinate || kind == StepKind::brine;
  if (!bath || safety_of(recipe, book).kinds.empty()) return;
  for (const std::string& name : recipe.steps[at].uses) {
    if (book.find_recipe(name) == nullptr) continue;
    for (std::size_t i = at + 1; i < recipe.steps.size(); ++i) {
      const MethodStep& later = recipe.steps[i];
      if (!is_used(later, name)) continue;
      if (later.control && later.control->kind == StepKind::simmer) break;
      StepNotice notice;
      notice.fault = StepFault::marinade;
      notice.number = i + 1;
      notice.kind = kind;
      notice.rule = rule;
      notice.marinade = name;
      notice.place = later.place;
      out.push_back(std::move(notice));
      break;
    }
  }
}

}  // namespace detail

}  // namespace platewright
