// SPDX-License-Identifier: MIT
#pragma once
// Whether a load fits into an oven beside the loads that are in it.

#include <algorithm>
#include <vector>

#include "platewright/day/oven_task.hpp"

namespace platewright::detail {

/// What the oven is set to for a load, `minute` after it went in; `minute` lies within the load.
inline const Temperature& set_to(const OvenTask& task, Minute minute) {
  for (const OvenSetting& setting : task.settings) {
    if (minute < setting.lasts) return setting.at;
    minute -= setting.lasts;
  }
  return task.settings.back().at;
}

/// The minutes at which the oven is set anew for a load, its beginning among them.
inline std::vector<Minute> settings_begin(const OvenTask& task, Minute begins) {
  std::vector<Minute> out;
  for (const OvenSetting& setting : task.settings) {
    out.push_back(begins);
    begins += setting.lasts;
  }
  return out;
}

/// Two loads in one oven: at every minute that they share they ask for one temperature; those that
/// share none are as far apart as the oven takes from the last of the one to the first of the
/// other.
inline bool agree(const OvenTask& one, Minute one_begins, const OvenTask& other,
                  Minute other_begins, Minute change) {
  if (other_begins < one_begins) return agree(other, other_begins, one, one_begins, change);
  const Minute one_ends = one_begins + one.lasts();
  const Minute other_ends = other_begins + other.lasts();
  if (one_ends <= other_begins) {
    return one.settings.back().at == other.settings.front().at || other_begins - one_ends >= change;
  }
  if (one.settings.size() == 1 && other.settings.size() == 1) {
    return one.settings.front().at == other.settings.front().at;
  }
  std::vector<Minute> minutes = settings_begin(one, one_begins);
  const std::vector<Minute> more = settings_begin(other, other_begins);
  minutes.insert(minutes.end(), more.begin(), more.end());
  const Minute shared_end = std::min(one_ends, other_ends);
  return std::all_of(minutes.begin(), minutes.end(), [&](Minute minute) {
    if (minute < other_begins || minute >= shared_end) return true;
    return set_to(one, minute - one_begins) == set_to(other, minute - other_begins);
  });
}

/// The racks that stay free in an oven from `begins` to `ends`; of no oven fewer than 0.
inline std::int64_t free_racks(const std::vector<OvenTask>& tasks,
                               const std::vector<OvenLoad>& loads, std::size_t oven,
                               std::int64_t racks, Minute begins, Minute ends) {
  const auto taken_at = [&](Minute minute) {
    std::int64_t out = 0;
    for (const OvenLoad& load : loads) {
      if (load.oven != oven || load.begins > minute) continue;
      if (minute < load.begins + tasks[load.task].lasts()) out += load.racks;
    }
    return out;
  };
  std::int64_t most = taken_at(begins);
  for (const OvenLoad& load : loads) {
    if (load.oven == oven && load.begins > begins && load.begins < ends) {
      most = std::max(most, taken_at(load.begins));
    }
  }
  return std::max<std::int64_t>(racks - most, 0);
}

inline std::int64_t racks_for(const OvenTask& task, std::size_t oven, std::int64_t pans) {
  const std::int64_t on_a_rack = task.on_a_rack[oven];
  return (pans + on_a_rack - 1) / on_a_rack * task.racks_high[oven];
}

/// How many pans of a task go into an oven at that minute: none where a load that is in it asks for
/// another temperature.
inline std::int64_t pans_that_fit(const std::vector<OvenTask>& tasks,
                                  const std::vector<OvenLoad>& loads, std::size_t task,
                                  std::size_t oven, const OvenRoom& room, Minute begins) {
  const OvenTask& wanted = tasks[task];
  const std::int64_t on_a_rack = wanted.on_a_rack[oven];
  if (on_a_rack == 0) return 0;
  for (const OvenLoad& load : loads) {
    if (load.oven == oven && !agree(tasks[load.task], load.begins, wanted, begins, room.change)) {
      return 0;
    }
  }
  const std::int64_t free =
      free_racks(tasks, loads, oven, room.racks, begins, begins + wanted.lasts());
  if (wanted.whole_oven) return free == room.racks ? 1 : 0;
  return free / wanted.racks_high[oven] * on_a_rack;
}

}  // namespace platewright::detail
