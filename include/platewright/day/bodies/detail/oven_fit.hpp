// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/detail/oven_fit.hpp.

#include <algorithm>

#include "platewright/day/detail/oven_fit.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY const Temperature& set_to(const OvenTask& task, Minute minute) {
  for (const OvenSetting& setting : task.settings) {
    if (minute < setting.lasts) return setting.at;
    minute -= setting.lasts;
  }
  return task.settings.back().at;
}

PLATEWRIGHT_BODY std::vector<Minute> settings_begin(const OvenTask& task, Minute begins) {
  std::vector<Minute> out;
  for (const OvenSetting& setting : task.settings) {
    out.push_back(begins);
    begins += setting.lasts;
  }
  return out;
}

PLATEWRIGHT_BODY bool agree(const OvenTask& one, Minute one_begins, const OvenTask& other,
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

PLATEWRIGHT_BODY std::int64_t free_racks(const std::vector<OvenTask>& tasks,
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

PLATEWRIGHT_BODY std::int64_t racks_for(const OvenTask& task, std::size_t oven, std::int64_t pans) {
  const std::int64_t on_a_rack = task.on_a_rack[oven];
  return (pans + on_a_rack - 1) / on_a_rack * task.racks_high[oven];
}

PLATEWRIGHT_BODY std::int64_t pans_that_fit(const std::vector<OvenTask>& tasks,
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
