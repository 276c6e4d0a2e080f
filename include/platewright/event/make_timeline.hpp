#pragma once
// Works a timeline out.

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

/// Walks back from a moment; each step that is put in moves it.
class BackwardClock {
 public:
  BackwardClock(const LocalTime& latest, const std::optional<LocalTime>& earliest, bool open)
      : latest_(latest), earliest_(earliest), open_(open) {}

  const LocalTime& latest() const { return latest_; }
  const std::optional<LocalTime>& earliest() const { return earliest_; }
  bool open() const { return open_; }

  void go_back(const TimeSpan& span) {
    latest_ -= whole_minutes(span.least);
    if (earliest_) *earliest_ -= whole_minutes(span.most);
  }

  /// A step whose length no one knows: the latest moment stays a bound, the earliest is lost.
  void go_back_unknown() {
    earliest_.reset();
    open_ = true;
  }

  /// An entry that begins now.
  TimelineEntry entry(TimelineKind kind, const Recipe& recipe) const {
    TimelineEntry out;
    out.kind = kind;
    out.recipe = recipe.name;
    out.latest = latest_;
    out.earliest = earliest_;
    out.open = open_;
    return out;
  }

 private:
  LocalTime latest_;
  std::optional<LocalTime> earliest_;
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
  std::optional<LocalTime> earliest;
  if (left.earliest() && right.earliest()) earliest = std::min(*left.earliest(), *right.earliest());
  return {std::min(left.latest(), right.latest()), earliest, left.open() || right.open()};
}

inline void keep_earlier(std::map<std::string, BackwardClock>& begins, const std::string& recipe,
                         const BackwardClock& clock) {
  const auto [known, is_new] = begins.emplace(recipe, clock);
  if (!is_new) known->second = earlier(known->second, clock);
}

inline void add_recipes(const Production& production, Timeline& timeline) {
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
}

}  // namespace detail

/// What has to begin when. Steps of a method follow each other; the oven, and then the rest, come
/// at the step that is marked for it, or after all steps where none is. A step behind it (carving,
/// a gravy) begins when the rest is over: one that is really done during the rest makes the plan
/// early, never late. A sub-recipe is ready before anything of the recipe that uses it begins.
/// Steps without a time are not listed. Orders stand at midnight of their last day. Throws Failure
/// for an event that does not say when the food is served, and for a step that takes more than a
/// year.
inline Timeline make_timeline(const Event& event, const Production& production,
                              const Order& order) {
  if (!event.at) throw Failure(at(problems::event_without_time(event.name), event.place));
  Timeline out;
  out.served = *event.at;
  TimelineEntry serve;
  serve.kind = TimelineKind::serve;
  serve.latest = out.served;
  serve.earliest = out.served;
  out.entries.push_back(std::move(serve));
  detail::add_recipes(production, out);
  for (const SupplierOrder& supplier : order.suppliers) {
    if (!supplier.order_by) continue;
    TimelineEntry entry;
    entry.kind = TimelineKind::order;
    entry.latest = *supplier.order_by;
    entry.supplier = supplier.supplier;
    out.entries.push_back(std::move(entry));
  }
  // What was put in last comes first.
  std::reverse(out.entries.begin(), out.entries.end());
  std::stable_sort(out.entries.begin(), out.entries.end(),
                   [](const TimelineEntry& left, const TimelineEntry& right) {
                     return left.latest < right.latest;
                   });
  return out;
}

}  // namespace platewright
