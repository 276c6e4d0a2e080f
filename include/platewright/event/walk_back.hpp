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

/// Puts in a recipe's steps, last first; the clock then stands at its beginning. The oven comes at
/// the step that says so, whose own time it stands for, or else after all steps.
inline void add_recipe(const ScaledRecipe& scaled, BackwardClock& clock, Timeline& timeline) {
  const Recipe& recipe = *scaled.recipe;
  const auto at_oven = std::find_if(recipe.steps.rbegin(), recipe.steps.rend(),
                                    [](const MethodStep& step) { return step.oven; });
  if (at_oven == recipe.steps.rend()) add_oven(scaled, clock, timeline);
  for (auto step = recipe.steps.rbegin(); step != recipe.steps.rend(); ++step) {
    if (step == at_oven) add_oven(scaled, clock, timeline);
    if (!step->takes || (step == at_oven && !recipe.oven.empty())) continue;
    clock.go_back(*step->takes);
    timeline.entries.push_back(clock.entry(TimelineKind::method_step, recipe));
    timeline.entries.back().text = step->text;
    timeline.entries.back().takes = step->takes;
  }
}

/// The earlier of two beginnings, which a sub-recipe has to be ready for.
inline BackwardClock earlier(const BackwardClock& left, const BackwardClock& right) {
  return {std::min(left.latest(), right.latest()), std::min(left.soonest(), right.soonest()),
          left.open() || right.open()};
}

inline void keep_earlier(std::map<std::string, BackwardClock>& begins, const std::string& recipe,
                         const BackwardClock& clock) {
  const auto [known, is_new] = begins.emplace(recipe, clock);
  if (!is_new) known->second = earlier(known->second, clock);
}

/// Puts in all recipes; gives the clocks as they stand at the beginning of each, by its name.
inline std::map<std::string, BackwardClock> add_recipes(const Production& production,
                                                        Timeline& timeline) {
  std::map<std::string, BackwardClock> begins;
  for (const DishPlan& dish : production.dishes) {
    if (begins.count(dish.scaled.recipe->name) != 0) continue;
    BackwardClock clock(timeline.served, timeline.served, false);
    add_recipe(dish.scaled, clock, timeline);
    begins.emplace(dish.scaled.recipe->name, clock);
  }
  // Users stand behind what they use, so that going backwards meets every user first.
  for (auto plan = production.sub_recipes.rbegin(); plan != production.sub_recipes.rend(); ++plan) {
    std::optional<BackwardClock> clock;
    for (const std::string& user : plan->used_by) {
      const BackwardClock& begin = begins.at(user);
      clock = clock ? earlier(*clock, begin) : begin;
    }
    add_recipe(plan->scaled, *clock, timeline);
    keep_earlier(begins, plan->scaled.recipe->name, *clock);
  }
  return begins;
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
  for (const auto& [recipe, clock] : detail::add_recipes(production, walked)) {
    const bool timed = clock.soonest() < served.instant();
    out.emplace(recipe, timed ? served.zone().local(clock.soonest())
                              : LocalTime(std::chrono::floor<std::chrono::days>(served.local())));
  }
  return out;
}

}  // namespace platewright
