// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/walk_back.hpp.

#include <algorithm>
#include <chrono>
#include <utility>
#include <vector>

#include "platewright/event/walk_back.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY void BackwardClock::go_back(const Work& work) {
  latest_ -= work.least;
  soonest_ -= work.most;
  open_ = open_ || has_unknown_time(work);
}

PLATEWRIGHT_BODY TimelineEntry BackwardClock::entry(TimelineKind kind, const Recipe& recipe,
                                                    std::size_t work) const {
  TimelineEntry out;
  out.kind = kind;
  out.recipe = recipe.name;
  out.work = work;
  out.latest = latest_;
  out.earliest = earliest();
  out.open = open_;
  return out;
}

PLATEWRIGHT_BODY BackwardClock earlier(const BackwardClock& left, const BackwardClock& right) {
  return {std::min(left.latest(), right.latest()), std::min(left.soonest(), right.soonest()),
          left.open() || right.open()};
}

PLATEWRIGHT_BODY void keep_earlier(ClocksByName& clocks, const std::string& name,
                                   const BackwardClock& clock) {
  const auto [known, is_new] = clocks.emplace(name, clock);
  if (!is_new) known->second = earlier(known->second, clock);
}

PLATEWRIGHT_BODY const BackwardClock& RecipeClocks::needed(const std::string& name) const {
  const auto step = used.find(name);
  return step == used.end() ? begin : step->second;
}

PLATEWRIGHT_BODY void add_entry(const Work& work, std::size_t number, const Recipe& recipe,
                                const BackwardClock& clock, Timeline& timeline) {
  switch (work.kind) {
    case WorkKind::step: {
      if (!work.takes) return;
      TimelineEntry entry = clock.entry(TimelineKind::method_step, recipe, number);
      entry.text = work.step->text;
      entry.takes = work.takes;
      if (work.step->control) entry.step = work.step->control->kind;
      timeline.entries.push_back(std::move(entry));
      return;
    }
    case WorkKind::oven:
      timeline.entries.push_back(clock.entry(TimelineKind::oven_step, recipe, number));
      timeline.entries.back().oven = work.oven;
      return;
    case WorkKind::rest: {
      if (recipe.oven.empty()) return;
      TimelineEntry pulled = clock.entry(TimelineKind::pull, recipe, number);
      pulled.inside = pull_temperature(recipe);
      pulled.takes = work.takes;
      timeline.entries.push_back(std::move(pulled));
      return;
    }
  }
}

/// Puts in a recipe's work, last first, from the moment at which it is ready.
PLATEWRIGHT_BODY RecipeClocks add_recipe(const ScaledRecipe& scaled, BackwardClock clock,
                                         Timeline& timeline) {
  const std::vector<Work> works = work_of(scaled);
  ClocksByName used;
  for (std::size_t i = works.size(); i-- > 0;) {
    const Work& work = works[i];
    clock.go_back(work);
    add_entry(work, i, *scaled.recipe, clock, timeline);
    if (work.kind != WorkKind::step) continue;
    for (const std::string& name : work.step->uses) keep_earlier(used, name, clock);
  }
  return {clock, used};
}

PLATEWRIGHT_BODY void keep_earlier(std::map<std::string, RecipeClocks>& recipes,
                                   const std::string& name, const RecipeClocks& clocks) {
  const auto [known, is_new] = recipes.emplace(name, clocks);
  if (is_new) return;
  // What the other one's steps use is asked for before its beginning counts for either.
  for (const auto& [thing, clock] : clocks.used) keep_earlier(known->second.used, thing, clock);
  known->second.begin = earlier(known->second.begin, clocks.begin);
}

PLATEWRIGHT_BODY BackwardClock needed_by(const SubRecipePlan& plan,
                                         const std::map<std::string, RecipeClocks>& recipes) {
  std::optional<BackwardClock> out;
  for (const std::string& user : plan.used_by) {
    const BackwardClock& needed = recipes.at(user).needed(plan.scaled.recipe->name);
    out = out ? earlier(*out, needed) : needed;
  }
  return *out;
}

PLATEWRIGHT_BODY std::map<std::string, RecipeClocks> add_recipes(const Production& production,
                                                                 Timeline& timeline) {
  std::map<std::string, RecipeClocks> out;
  for (const DishPlan& dish : production.dishes) {
    const std::string& name = dish.scaled.recipe->name;
    if (out.count(name) != 0) continue;
    const BackwardClock served(timeline.served, timeline.served, false);
    out.emplace(name, add_recipe(dish.scaled, served, timeline));
  }
  // Users stand behind what they use, so that going backwards meets every user first.
  for (auto plan = production.sub_recipes.rbegin(); plan != production.sub_recipes.rend(); ++plan) {
    const std::size_t before = timeline.entries.size();
    keep_earlier(out, plan->scaled.recipe->name,
                 add_recipe(plan->scaled, needed_by(*plan, out), timeline));
    for (std::size_t i = before; i < timeline.entries.size(); ++i) {
      timeline.entries[i].for_others = true;
    }
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY std::map<std::string, LocalTime> soonest_beginnings(const Production& production,
                                                                     const ZonedTime& served) {
  Timeline walked;
  walked.served = served.instant();
  std::map<std::string, LocalTime> out;
  for (const auto& [recipe, clocks] : detail::add_recipes(production, walked)) {
    const Instant soonest = clocks.begin.soonest();
    const bool timed = soonest < served.instant();
    out.emplace(recipe, timed ? served.zone().local(soonest)
                              : LocalTime(std::chrono::floor<std::chrono::days>(served.local())));
  }
  return out;
}

}  // namespace platewright
