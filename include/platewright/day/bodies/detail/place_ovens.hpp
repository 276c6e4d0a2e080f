// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/detail/place_ovens.hpp.

#include <algorithm>
#include <utility>
#include <variant>

#include "platewright/day/detail/place_ovens.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY void OvenPlanner::place(const std::vector<RecipeChain*>& chains, DayPlan& plan) {
  std::vector<std::size_t> wanted;
  for (RecipeChain* chain : chains) {
    if (!chain->has_oven()) continue;
    const MinuteSpan begins = oven_begins(*chain);
    chain->first_load = chain->last_load = begins.most;
    if (ovens_.empty()) continue;
    auto task = oven_task(*chain, ovens_);
    if (const auto* not_said = std::get_if<NotSaid>(&task)) {
      plan.not_said.push_back({chain->name(), *not_said});
      continue;
    }
    wanted.push_back(tasks_.size());
    tasks_.push_back(std::move(std::get<OvenTask>(task)));
    chains_.push_back(chain);
    say_what_is_not_said(*chain, plan);
  }
  load(std::move(wanted), plan);
}

PLATEWRIGHT_BODY void OvenPlanner::say_what_is_not_said(const RecipeChain& chain,
                                                        DayPlan& plan) const {
  const OvenTask& task = tasks_.back();
  if (task.whole_oven) plan.not_said.push_back({chain.name(), NotSaid::pan});
  const bool asked = std::any_of(ovens_.begin(), ovens_.end(),
                                 [](const Oven& oven) { return oven.apart.has_value(); });
  if (asked && !task.whole_oven && !chain.scaled->recipe->stands) {
    plan.not_said.push_back({chain.name(), NotSaid::height});
  }
  const MinuteSpan after = time_of_works(chain, chain.oven_to, chain.works.size());
  if (chain.used_by.empty() && after.least == 0) {
    plan.not_said.push_back({chain.name(), NotSaid::dishing_up});
  }
}

PLATEWRIGHT_BODY FoundLoads OvenPlanner::find(const std::vector<std::size_t>& wanted) {
  FoundLoads out = find_loads(rooms_, tasks_, wanted, loads_, std::min(left_, most_load_trials));
  left_ -= out.trials;
  return out;
}

PLATEWRIGHT_BODY void OvenPlanner::load(std::vector<std::size_t> wanted, DayPlan& plan) {
  if (wanted.empty()) return;
  FoundLoads found = find(wanted);
  while (!found.loads) {
    const OvenConflict conflict = oven_conflict(rooms_, tasks_, wanted, loads_, left_);
    // The last of them is left out, so that the rest of the day can be shown; all of them where
    // no more may be tried.
    const std::vector<std::size_t> left_out =
        left_ > 0 ? std::vector<std::size_t>{conflict.tasks.back()} : wanted;
    say(conflict, left_out, plan);
    for (const std::size_t task : left_out) {
      wanted.erase(std::find(wanted.begin(), wanted.end(), task));
    }
    if (wanted.empty()) return;
    found = find(wanted);
  }
  const std::size_t before = loads_.size();
  loads_ = std::move(*found.loads);
  for (const std::size_t task : wanted) set_loads(task, before, plan);
}

PLATEWRIGHT_BODY void OvenPlanner::say(const OvenConflict& conflict,
                                       const std::vector<std::size_t>& left_out,
                                       DayPlan& plan) const {
  OvensShort out;
  Minute from = tasks_[conflict.tasks.front()].soonest;
  Minute until = from;
  for (const std::size_t task : conflict.tasks) {
    out.recipes.push_back(tasks_[task].recipe);
    from = std::min(from, tasks_[task].soonest);
    until = std::max(until, tasks_[task].latest + tasks_[task].lasts());
  }
  for (const std::size_t task : left_out) out.left_out.push_back(tasks_[task].recipe);
  out.from = Instant(std::chrono::minutes(from));
  out.until = Instant(std::chrono::minutes(until));
  out.looked_at_all = conflict.looked_at_all;
  if (conflict.one_more_oven) out.one_more_oven = ovens_[*conflict.one_more_oven].name;
  for (const OvenConflict::Sooner& one : conflict.sooner) {
    out.sooner.push_back({tasks_[one.task].recipe, std::chrono::minutes(one.minutes)});
  }
  plan.ovens_short.push_back(std::move(out));
}

PLATEWRIGHT_BODY void OvenPlanner::set_loads(std::size_t task, std::size_t from, DayPlan& plan) {
  std::vector<OvenLoad> loads;
  for (std::size_t i = from; i < loads_.size(); ++i) {
    if (loads_[i].task == task) loads.push_back(loads_[i]);
  }
  std::stable_sort(loads.begin(), loads.end(), [](const OvenLoad& left, const OvenLoad& right) {
    return left.begins < right.begins;
  });
  RecipeChain& chain = *chains_[task];
  chain.first_load = loads.front().begins;
  chain.last_load = loads.back().begins;
  for (std::size_t i = 0; i < loads.size(); ++i) {
    plan.loads.push_back(planned(loads[i], chain, i + 1, loads.size()));
  }
}

PLATEWRIGHT_BODY PlannedLoad OvenPlanner::planned(const OvenLoad& load, const RecipeChain& chain,
                                                  std::size_t number, std::size_t of) const {
  PlannedLoad out;
  out.recipe = chain.name();
  out.oven = load.oven;
  out.in = Instant(std::chrono::minutes(load.begins));
  out.out = out.in + std::chrono::minutes(tasks_[load.task].lasts());
  out.pans = tasks_[load.task].whole_oven ? 0 : load.pans;
  if (const auto& vessel = chain.scaled->plan.vessel) out.pan = vessel->name;
  out.racks = load.racks;
  for (std::size_t i = chain.oven_from; i < chain.oven_to; ++i) {
    out.settings.push_back(*chain.works[i].oven);
  }
  out.number = number;
  out.of = of;
  return out;
}

}  // namespace platewright::detail
