// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/kept_food.hpp.

#include <algorithm>
#include <cstdint>
#include <utility>

#include "platewright/event/kept_food.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY std::chrono::local_days last_day(const std::chrono::local_days& made,
                                                  const Duration& within) {
  const Integer days = floor_of(within.in(units::day));
  return made + std::chrono::days(static_cast<std::int64_t>(days) - 1);
}

PLATEWRIGHT_BODY std::optional<StepRule> dated_rule(const StepControl& control,
                                                    const SafetyTable& safety) {
  for (const StepRule& rule : safety.step_rules) {
    const bool dated = rule.demand == StepDemand::dated && rule.within.has_value();
    if (dated && applies(rule, control.kind, control.where)) return rule;
  }
  return std::nullopt;
}

PLATEWRIGHT_BODY const MethodStep* cold_step(const Recipe& recipe) {
  for (const MethodStep& step : recipe.steps) {
    if (step.control && step.control->kind == StepKind::hold_cold) return &step;
  }
  return nullptr;
}

PLATEWRIGHT_BODY std::optional<Instant> made_at(const Recipe& recipe, const Timeline& timeline) {
  std::optional<Instant> out;
  for (const TimelineEntry& entry : timeline.entries) {
    const bool kept = entry.step == StepKind::chill || entry.step == StepKind::hold_cold;
    if (entry.recipe != recipe.name || !kept) continue;
    const Instant begin = entry.earliest.value_or(entry.latest);
    if (!out || begin < *out) out = begin;
  }
  return out;
}

PLATEWRIGHT_BODY void add_kept(const Recipe& recipe, const Instant& last_use,
                               const Timeline& timeline, const SafetyTable& safety,
                               std::vector<KeptFood>& out) {
  const auto known = [&](const KeptFood& food) { return food.recipe == recipe.name; };
  if (std::any_of(out.begin(), out.end(), known)) return;
  const MethodStep* cold = cold_step(recipe);
  const auto begin = made_at(recipe, timeline);
  if (cold == nullptr || !begin) return;
  const auto day_of = [&](const Instant& time) {
    return std::chrono::floor<std::chrono::days>(timeline.zone.local(time));
  };
  KeptFood food{recipe.name,      std::nullopt, *cold->control, day_of(*begin),
                day_of(last_use), std::nullopt, std::nullopt};
  for (const MethodStep& step : recipe.steps) {
    if (&step == cold) break;
    if (step.control && step.control->kind == StepKind::chill) food.cooled = step.control;
  }
  food.rule = dated_rule(food.kept, safety);
  if (food.rule) food.use_by = last_day(food.made, *food.rule->within);
  out.push_back(std::move(food));
}

PLATEWRIGHT_BODY Instant last_needed(const SubRecipePlan& plan, const RecipeClocksByName& clocks) {
  std::optional<Instant> out;
  for (const std::string& user : plan.used_by) {
    const Instant needed = clocks.at(user).needed(plan.scaled.recipe->name).latest();
    if (!out || *out < needed) out = needed;
  }
  return *out;
}

PLATEWRIGHT_BODY std::vector<KeptFood> kept_foods(const Production& production,
                                                  const RecipeClocksByName& clocks,
                                                  const Timeline& timeline,
                                                  const SafetyTable& safety) {
  std::vector<KeptFood> out;
  for (const DishPlan& dish : production.dishes) {
    add_kept(*dish.scaled.recipe, timeline.served, timeline, safety, out);
  }
  for (const SubRecipePlan& plan : production.sub_recipes) {
    add_kept(*plan.scaled.recipe, last_needed(plan, clocks), timeline, safety, out);
  }
  return out;
}

PLATEWRIGHT_BODY bool keeping_is_not_said(const Recipe& recipe) {
  const auto kind_is = [&](bool (*of_kind)(StepKind)) {
    return std::any_of(recipe.steps.begin(), recipe.steps.end(), [&](const MethodStep& step) {
      return step.control && of_kind(step.control->kind);
    });
  };
  return (!recipe.oven.empty() || kind_is(cooks)) && !kind_is(keeps_food);
}

PLATEWRIGHT_BODY std::vector<WaitingFood> waiting_foods(const Production& production,
                                                        const RecipeClocksByName& clocks,
                                                        const SafetyTable& safety) {
  std::vector<WaitingFood> out;
  const auto limit = safety.limit("time as control, hot");
  if (!limit || !limit->within) return out;
  for (const SubRecipePlan& plan : production.sub_recipes) {
    const Recipe& recipe = *plan.scaled.recipe;
    if (!keeping_is_not_said(recipe)) continue;
    const std::chrono::minutes wait = last_needed(plan, clocks) - needed_by(plan, clocks).soonest();
    const Duration longest = Duration::of(Rational(wait.count()), units::minute);
    if (longest > *limit->within) out.push_back({recipe.name, longest, *limit});
  }
  return out;
}

}  // namespace platewright::detail
