// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/detail/space_needs.hpp.

#include <algorithm>
#include <map>

#include "platewright/day/detail/space_needs.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY Rational hobs_for(const Work& work, const ScaledRecipe& scaled) {
  const MethodStep& step = *work.step;
  if (step.needs.hobs) return *step.needs.hobs;
  const bool cooks_there = step.control && (step.control->kind == StepKind::sear ||
                                            step.control->kind == StepKind::simmer);
  if (!cooks_there) return 0;
  return scaled.plan.vessels && scaled.recipe->oven.empty() ? scaled.plan.vessels->count
                                                            : Rational(1);
}

PLATEWRIGHT_BODY bool stands_in(const Work& work, Space space) {
  if (!work.step->control) return false;
  const StepControl& control = *work.step->control;
  if (space == Space::cold_room) return control.where == StepPlace::refrigerator;
  return control.where == StepPlace::hot_box ||
         (control.kind == StepKind::hold_hot && !control.where);
}

PLATEWRIGHT_BODY std::optional<Rational> places_for(const RecipeChain& chain, const PanSpace& space,
                                                    DayPlan& plan) {
  const auto& vessel = chain.scaled->plan.vessel;
  const auto& vessels = chain.scaled->plan.vessels;
  if (!vessel || !vessels) {
    plan.not_said.push_back({chain.name(), NotSaid::pan});
    return std::nullopt;
  }
  const auto fit = pans_in_one_place(vessel->name, vessel->bottom, space);
  if (!fit || *fit == 0) {
    plan.not_said.push_back({chain.name(), NotSaid::pan_size});
    return std::nullopt;
  }
  return up_to(vessels->count / *fit, 1);
}

PLATEWRIGHT_BODY std::vector<SpaceUse> uses_of(Space space, const std::optional<PanSpace>& room,
                                               const std::vector<RecipeChain>& chains,
                                               DayPlan& plan) {
  std::vector<SpaceUse> out;
  for (const RecipeChain& chain : chains) {
    for (std::size_t i = 0; i < chain.works.size(); ++i) {
      const Work& work = chain.works[i];
      if (work.kind != WorkKind::step) continue;
      std::optional<Rational> takes;
      if (space == Space::hobs) {
        takes = hobs_for(work, *chain.scaled);
      } else if (stands_in(work, space)) {
        takes = places_for(chain, *room, plan);
      }
      if (takes && *takes > 0 && chain.begins[i] < chain.end_of(i)) {
        out.push_back({chain.begins[i], chain.end_of(i), *takes, chain.name()});
      }
    }
  }
  return out;
}

PLATEWRIGHT_BODY void add_recipes_at(Minute minute, const std::vector<SpaceUse>& uses,
                                     SpaceShort& out) {
  for (const SpaceUse& use : uses) {
    if (minute < use.begins || minute >= use.ends) continue;
    if (std::find(out.recipes.begin(), out.recipes.end(), use.recipe) == out.recipes.end()) {
      out.recipes.push_back(use.recipe);
    }
  }
}

PLATEWRIGHT_BODY void find_shortage(Space space, const Rational& there,
                                    const std::vector<SpaceUse>& uses, DayPlan& plan) {
  std::map<Minute, Rational> changes;
  for (const SpaceUse& use : uses) {
    changes[use.begins] += use.takes;
    changes[use.ends] -= use.takes;
  }
  Rational wanted;
  bool goes_on = false;
  for (const auto& [minute, change] : changes) {
    wanted += change;
    const Instant now{std::chrono::minutes(minute)};
    if (goes_on) plan.space_short.back().end = now;
    if (wanted <= there) {
      goes_on = false;
      continue;
    }
    if (!goes_on) plan.space_short.push_back({space, now, now, wanted, there, {}});
    goes_on = true;
    SpaceShort& one = plan.space_short.back();
    one.wanted = std::max(one.wanted, wanted);
    add_recipes_at(minute, uses, one);
  }
}

PLATEWRIGHT_BODY void find_shortages(const std::vector<RecipeChain>& chains, DayPlan& plan) {
  const Workplace& workplace = plan.workplace;
  if (workplace.hobs) {
    find_shortage(Space::hobs, *workplace.hobs, uses_of(Space::hobs, {}, chains, plan), plan);
  }
  if (workplace.hot_box) {
    find_shortage(Space::hot_box, workplace.hot_box->holds,
                  uses_of(Space::hot_box, workplace.hot_box, chains, plan), plan);
  }
  if (workplace.cold_room) {
    find_shortage(Space::cold_room, workplace.cold_room->holds,
                  uses_of(Space::cold_room, workplace.cold_room, chains, plan), plan);
  }
}

}  // namespace platewright::detail
