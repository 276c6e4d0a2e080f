// SPDX-License-Identifier: MIT
#pragma once
// Puts the recipes of a plan into the ovens.

#include <string>
#include <vector>

#include "platewright/day/detail/oven_tasks.hpp"
#include "platewright/day/oven_conflict.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

/// Keeps all tasks and loads so far, so that what comes later goes beside them.
class OvenPlanner {
 public:
  /// `left` is what all searches together may still try; it is less afterwards.
  OvenPlanner(const Workplace& workplace, std::int64_t& left)
      : ovens_(workplace.ovens), rooms_(oven_rooms(workplace)), left_(left) {}

  /// Plans the ovens of chains whose end is known, all at once, and says when each one's first and
  /// last load go in: at the latest where no oven is planned for it.
  void place(const std::vector<RecipeChain*>& chains, DayPlan& plan);

 private:
  void say_what_is_not_said(const RecipeChain& chain, DayPlan& plan) const;

  FoundLoads find(const std::vector<std::size_t>& wanted);

  void load(std::vector<std::size_t> wanted, DayPlan& plan);

  void say(const OvenConflict& conflict, const std::vector<std::size_t>& left_out,
           DayPlan& plan) const;

  void set_loads(std::size_t task, std::size_t from, DayPlan& plan);

  PlannedLoad planned(const OvenLoad& load, const RecipeChain& chain, std::size_t number,
                      std::size_t of) const;

  const std::vector<Oven>& ovens_;
  std::vector<OvenRoom> rooms_;
  std::int64_t& left_;
  std::vector<OvenTask> tasks_ = {};
  std::vector<RecipeChain*> chains_ = {};  ///< of the tasks
  std::vector<OvenLoad> loads_ = {};
};

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/detail/place_ovens.hpp"
#endif
