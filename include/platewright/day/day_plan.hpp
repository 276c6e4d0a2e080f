// SPDX-License-Identifier: MIT
#pragma once
// The day of an event: which oven when, who does what, what does not go.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "platewright/day/people_on_duty.hpp"
#include "platewright/event/recipe_work.hpp"

namespace platewright {

/// A work as it is planned. `end` is the beginning of the next one.
struct PlannedWork {
  std::string recipe;
  bool for_others = false;  ///< as a part of other recipes
  std::size_t number = 0;   ///< in `work_of` of the recipe, from 0
  WorkKind kind = WorkKind::step;
  std::string text;      ///< of a step
  std::size_t step = 0;  ///< of a step: its number on the card, from 1
  bool timed = false;    ///< the recipe says how long it takes
  Instant begin;
  Instant end;
  std::chrono::minutes hands{0};
  std::size_t people = 0;            ///< that it takes
  std::string role;                  ///< of them; empty for anyone
  std::vector<std::size_t> persons;  ///< who they are; fewer than it takes where no more are free
};

/// Pans that go into an oven together.
struct PlannedLoad {
  std::string recipe;
  std::size_t oven = 0;  ///< of the workplace, from 0
  Instant in;
  Instant out;
  std::int64_t pans = 0;
  std::string pan;  ///< empty where the recipe names none
  std::int64_t racks = 0;
  std::vector<OvenStep> settings;
  std::size_t number = 1;  ///< of the loads of the recipe, in the order of the clock
  std::size_t of = 1;
};

/// A dish for which the ovens do not do.
struct OvensShort {
  std::vector<std::string> recipes;   ///< that can't all be cooked
  std::vector<std::string> left_out;  ///< of them, that no oven is planned for
  Instant from;                       ///< the soonest that one may go in
  Instant until;                      ///< the latest that one has to be out
  bool looked_at_all = true;
  std::string one_more_oven;  ///< like this one, would do; empty where it would not
  struct Sooner {
    std::string recipe;
    std::chrono::minutes time;
  };
  std::vector<Sooner> sooner;  ///< each alone would do, if it is kept hot
};

/// A step that has too few people.
struct HandsShort {
  std::string recipe;
  std::size_t step = 0;
  std::string text;
  std::string role;
  Instant begin;
  Instant end;
  std::size_t wanted = 0;
  std::size_t free = 0;
  Place place;
};

/// What many share by their number.
enum class Space { hobs, hot_box, cold_room };

/// More of a space is asked for than there is.
struct SpaceShort {
  Space space = Space::hobs;
  Instant begin;
  Instant end;
  Rational wanted;  ///< the most at any time in between
  Rational there;
  std::vector<std::string> recipes;
};

/// What a plan does not know of a recipe.
enum class NotSaid {
  pan,        ///< how many pans it has: it takes a whole oven, and no place elsewhere
  oven_time,  ///< how long it is in the oven: no oven is planned for it
  pan_size,   ///< whether its pan goes into the ovens: no oven is planned for it
  too_hot,    ///< no oven has its temperatures: none is planned for it
  height,     ///< how high it stands, where an oven says how far its racks are apart
  dishing_up  ///< any time between its oven and the serving
};

struct DayNotSaid {
  std::string recipe;
  NotSaid what = NotSaid::pan;
};

/// One recipe on the way from the first work to the serving.
struct LineOfWork {
  std::string recipe;
  Instant begin;
  Instant end;
};

/// It fits where nothing is short. What is not said is not held against the kitchen.
struct DayPlan {
  Instant served;
  ZoneRules zone;
  Workplace workplace;
  std::vector<Person> people;
  std::vector<PlannedWork> works;  ///< by `begin`
  std::vector<PlannedLoad> loads;  ///< by `in`
  std::vector<OvensShort> ovens_short;
  std::vector<HandsShort> hands_short;
  std::vector<SpaceShort> space_short;
  std::vector<DayNotSaid> not_said;
  std::vector<LineOfWork> longest;  ///< the line of work that begins first
};

inline bool fits(const DayPlan& plan) {
  return plan.ovens_short.empty() && plan.hands_short.empty() && plan.space_short.empty();
}

}  // namespace platewright
