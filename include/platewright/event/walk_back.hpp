// SPDX-License-Identifier: MIT
#pragma once
// From the serving back through the steps of every recipe.

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/recipe_work.hpp"
#include "platewright/event/timeline.hpp"

namespace platewright {

namespace detail {

/// Walks back from a moment in elapsed time; each step that is put in moves it.
class BackwardClock {
 public:
  BackwardClock(const Instant& latest, const Instant& soonest, bool open)
      : latest_(latest), soonest_(soonest), open_(open) {}

  const Instant& latest() const { return latest_; }
  /// By the longest of all times that are known.
  const Instant& soonest() const { return soonest_; }
  /// The same where every time is known.
  std::optional<Instant> earliest() const { return open_ ? std::nullopt : std::optional(soonest_); }
  bool open() const { return open_; }

  /// Of a work whose length no one knows the latest moment stays a bound, the earliest is lost.
  void go_back(const Work& work) {
    latest_ -= work.least;
    soonest_ -= work.most;
    open_ = open_ || has_unknown_time(work);
  }

  /// An entry that begins now.
  TimelineEntry entry(TimelineKind kind, const Recipe& recipe, std::size_t work) const {
    TimelineEntry out;
    out.kind = kind;
    out.recipe = recipe.name;
    out.work = work;
    out.latest = latest_;
    out.earliest = earliest();
    out.open = open_;
    return out;
  }

 private:
  Instant latest_;
  Instant soonest_;
  bool open_;
};

/// The earlier of two beginnings, which a sub-recipe has to be ready for.
inline BackwardClock earlier(const BackwardClock& left, const BackwardClock& right) {
  return {std::min(left.latest(), right.latest()), std::min(left.soonest(), right.soonest()),
          left.open() || right.open()};
}

using ClocksByName = std::map<std::string, BackwardClock>;

inline void keep_earlier(ClocksByName& clocks, const std::string& name,
                         const BackwardClock& clock) {
  const auto [known, is_new] = clocks.emplace(name, clock);
  if (!is_new) known->second = earlier(known->second, clock);
}

/// When a recipe is begun, and when the first of its steps begins that uses a thing by its name.
struct RecipeClocks {
  BackwardClock begin;
  ClocksByName used;

  /// Where no step says that it uses the thing, it is there when the recipe is begun.
  const BackwardClock& needed(const std::string& name) const {
    const auto step = used.find(name);
    return step == used.end() ? begin : step->second;
  }
};

/// Where the work begins that is numbered `work` in its recipe; what has no time and no oven is not
/// listed.
inline void add_entry(const Work& work, std::size_t number, const Recipe& recipe,
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
inline RecipeClocks add_recipe(const ScaledRecipe& scaled, BackwardClock clock,
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

/// Of a recipe that is a dish and is used by others as well: whichever comes first.
inline void keep_earlier(std::map<std::string, RecipeClocks>& recipes, const std::string& name,
                         const RecipeClocks& clocks) {
  const auto [known, is_new] = recipes.emplace(name, clocks);
  if (is_new) return;
  // What the other one's steps use is asked for before its beginning counts for either.
  for (const auto& [thing, clock] : clocks.used) keep_earlier(known->second.used, thing, clock);
  known->second.begin = earlier(known->second.begin, clocks.begin);
}

/// When the first of those that use a sub-recipe needs it.
inline BackwardClock needed_by(const SubRecipePlan& plan,
                               const std::map<std::string, RecipeClocks>& recipes) {
  std::optional<BackwardClock> out;
  for (const std::string& user : plan.used_by) {
    const BackwardClock& needed = recipes.at(user).needed(plan.scaled.recipe->name);
    out = out ? earlier(*out, needed) : needed;
  }
  return *out;
}

/// Puts in all recipes; gives their clocks by name.
inline std::map<std::string, RecipeClocks> add_recipes(const Production& production,
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

/// When each recipe of a production is begun at the soonest, on the clock of the place, by its
/// name: all that follows at its longest, a setting of the oven without a time counted as none. One
/// that takes no time that is written down is begun on the day of the serving, no one knows when:
/// at its midnight. Throws Failure for a step that takes more than a year.
inline std::map<std::string, LocalTime> soonest_beginnings(const Production& production,
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
