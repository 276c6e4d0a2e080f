#pragma once
// From the serving back through the steps of every recipe.

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/timeline.hpp"
#include "platewright/problem/catalogue/events.hpp"
#include "platewright/recipe/roasting_time.hpp"
#include "platewright/recipe/step_time.hpp"

namespace platewright {

namespace detail {

/// Whole minutes, rounded up, so that nothing begins too late. Throws Failure for more than a year,
/// which no kitchen waits and no calendar here is made for.
inline std::chrono::minutes whole_minutes(const Duration& time) {
  const Rational days = time.in(units::day);
  if (days > 366) throw Failure(problems::step_too_long(as_decimal(days, 0)));
  return std::chrono::minutes(static_cast<std::int64_t>(ceiling_of(time.in(units::minute))));
}

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

  void go_back(const TimeSpan& span) {
    latest_ -= whole_minutes(span.least);
    soonest_ -= whole_minutes(span.most);
  }

  /// A step whose length no one knows: the latest moment stays a bound, the earliest is lost.
  void go_back_unknown() { open_ = true; }

  /// An entry that begins now.
  TimelineEntry entry(TimelineKind kind, const Recipe& recipe) const {
    TimelineEntry out;
    out.kind = kind;
    out.recipe = recipe.name;
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

/// Puts in the rest and, before it, the settings of the oven; their times are those of the pieces
/// that are cooked.
inline void add_oven(const ScaledRecipe& scaled, BackwardClock& clock, Timeline& timeline) {
  const Recipe& recipe = *scaled.recipe;
  if (recipe.rest) clock.go_back({*recipe.rest, *recipe.rest});
  if (!recipe.oven.empty()) {
    TimelineEntry pulled = clock.entry(TimelineKind::pull, recipe);
    pulled.inside = pull_temperature(recipe);
    if (recipe.rest) pulled.takes = TimeSpan{*recipe.rest, *recipe.rest};
    timeline.entries.push_back(std::move(pulled));
  }
  const std::vector<PlannedOvenStep> settings = oven_plan(recipe, scaled.plan);
  for (auto planned = settings.rbegin(); planned != settings.rend(); ++planned) {
    const OvenStep& step = planned->step;
    if (step.time) {
      clock.go_back({*step.time, *step.time});
    } else {
      clock.go_back_unknown();
    }
    timeline.entries.push_back(clock.entry(TimelineKind::oven_step, recipe));
    timeline.entries.back().oven = step;
  }
}

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

/// Puts in a recipe's steps, last first, from the moment at which it is ready. The oven comes at
/// the step that says so, whose own time it stands for, or else after all steps.
inline RecipeClocks add_recipe(const ScaledRecipe& scaled, BackwardClock clock,
                               Timeline& timeline) {
  const Recipe& recipe = *scaled.recipe;
  ClocksByName used;
  const auto at_oven = std::find_if(recipe.steps.rbegin(), recipe.steps.rend(),
                                    [](const MethodStep& step) { return step.oven; });
  if (at_oven == recipe.steps.rend()) add_oven(scaled, clock, timeline);
  for (auto step = recipe.steps.rbegin(); step != recipe.steps.rend(); ++step) {
    if (step == at_oven) add_oven(scaled, clock, timeline);
    const std::optional<TimeSpan> takes = time_of(*step, scaled);
    if (takes && !(step == at_oven && !recipe.oven.empty())) {
      clock.go_back(*takes);
      timeline.entries.push_back(clock.entry(TimelineKind::method_step, recipe));
      timeline.entries.back().text = step->text;
      timeline.entries.back().takes = takes;
      if (step->control) timeline.entries.back().step = step->control->kind;
    }
    for (const std::string& name : step->uses) keep_earlier(used, name, clock);
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
    keep_earlier(out, plan->scaled.recipe->name,
                 add_recipe(plan->scaled, needed_by(*plan, out), timeline));
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
