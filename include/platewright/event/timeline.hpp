// SPDX-License-Identifier: MIT
#pragma once
// An occasion, backwards from the moment the food is served.

#include <chrono>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "platewright/event/production.hpp"
#include "platewright/safety/safety_table.hpp"

namespace platewright {

enum class TimelineKind {
  order,        ///< the last day to order from a supplier
  delivery,     ///< the last day for goods of a supplier to be there
  method_step,  ///< a step that takes a while: marinating, proving, simmering
  oven_step,    ///< the oven at one setting
  pull,         ///< out of the oven, to rest
  serve,
};

/// One entry. `latest` and `earliest` are when it begins: the shortest times of all that follows
/// give the one, the longest the other.
struct TimelineEntry {
  TimelineKind kind = TimelineKind::serve;
  Instant latest;                   ///< no later than this
  std::optional<Instant> earliest;  ///< no earlier than this; none where it can't be told
  /// It, or a step between it and the serving, goes until the inside has a temperature and names no
  /// time: how much earlier than `latest` it begins, the thermometer decides.
  bool open = false;
  std::string recipe;
  std::string text;                ///< of a step of the method
  std::string supplier;            ///< of an order and of a delivery
  std::vector<std::string> goods;  ///< of a delivery, by name
  /// Of an order, the hour of its day until which the supplier takes it; all day where none is
  /// said.
  std::optional<std::chrono::minutes> until = {};
  std::optional<OvenStep> oven;
  std::optional<Temperature> inside;  ///< when it is pulled
  std::optional<TimeSpan> takes;
  std::optional<StepKind> step = {};  ///< of a step of the method that says its kind
  bool for_others = false;            ///< of a recipe as a part of others
  std::size_t work = 0;               ///< its number in `work_of` of the recipe, from 0
  /// When it begins by the plan of the day, where one was made; see `plan_day`.
  std::optional<Instant> planned = {};
};

/// Orders and deliveries: of a day, not of an hour.
inline bool is_a_day(const TimelineEntry& entry) {
  return entry.kind == TimelineKind::order || entry.kind == TimelineKind::delivery;
}

/// When it begins: by the plan of the day, or else no later than it may.
inline Instant begin_of(const TimelineEntry& entry) {
  return entry.planned.value_or(entry.latest);
}

/// A dish that may stand longer between the oven and the serving than food may that is neither kept
/// hot nor cooled.
struct StandingFood {
  std::string recipe;
  Duration longest;  ///< from the end of the oven to the serving
  SafetyLimit limit;
};

/// A recipe that a step of its own holds cold: how it is cooled and kept, and what its label says
/// where the table of rules asks for a date.
struct KeptFood {
  std::string recipe;
  std::optional<StepControl> cooled;  ///< of the step that chills it; none where no step does
  StepControl kept;
  std::chrono::local_days made;  ///< the day on which it begins to cool, at the soonest
  std::chrono::local_days used;  ///< the last day on which it is used
  std::optional<StepRule> rule;
  /// By the rule, the day it is made being the first.
  std::optional<std::chrono::local_days> use_by;
  bool in_time() const { return !use_by || used <= *use_by; }
};

/// Cooked food that waits for the last recipe that uses it, while no step says how it is kept.
struct WaitingFood {
  std::string recipe;
  Duration longest;
  SafetyLimit limit;
};

/// By `latest`; entries of the same minute in the order in which they are done.
struct Timeline {
  Instant served;
  ZoneRules zone;  ///< of the event, for whoever prints its times
  std::vector<TimelineEntry> entries;
  std::vector<StandingFood> standing;  ///< in the order of the menu
  std::vector<KeptFood> kept = {};
  std::vector<WaitingFood> waiting = {};
};

}  // namespace platewright
