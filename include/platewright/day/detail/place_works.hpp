// SPDX-License-Identifier: MIT
#pragma once
// When each work of a recipe begins, so that there are hands for it.

#include <vector>

#include "platewright/day/day_plan.hpp"
#include "platewright/day/detail/recipe_chain.hpp"
#include "platewright/day/find_loads.hpp"
#include "platewright/day/hands.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

/// The beginnings that are tried for one work: a week of them.
inline constexpr Minute most_sooner = 7 * 24 * 60;

class WorkPlacer {
 public:
  WorkPlacer(PeopleOnDuty& people, DayPlan& plan) : people_(people), plan_(plan) {}

  /// From its end back to its beginning: each work that takes hands as late as free hands, the
  /// works behind it and the oven, which is planned, allow. What takes no hands fills the time in
  /// between.
  void place(RecipeChain& chain);

 private:
  struct Hired {
    Hands hands;
    std::vector<std::size_t> persons;
  };

  /// When a work may begin if the next one begins in `next`: the least is the soonest, the most the
  /// latest.
  static MinuteSpan begin_of(const RecipeChain& chain, std::size_t work, const MinuteSpan& next);

  /// The works behind `work`, which begins at `begin`, up to the next one that stands: each as late
  /// as it can.
  void settle(RecipeChain& chain, std::size_t work, Minute begin);

  void place_oven(RecipeChain& chain);

  /// The latest of these beginnings for which there are hands, or else the latest of all with those
  /// that there are.
  Minute hire(const RecipeChain& chain, std::size_t number, const MinuteSpan& begins);

  void report(const RecipeChain& chain, std::size_t number);

  PeopleOnDuty& people_;
  DayPlan& plan_;
  std::vector<Hired> hired_ = {};
  std::size_t settled_ = 0;  ///< the works from this on stand
};

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/detail/place_works.hpp"
#endif
