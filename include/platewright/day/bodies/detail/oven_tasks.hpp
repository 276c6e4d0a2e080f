// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/detail/oven_tasks.hpp.

#include <algorithm>

#include "platewright/day/detail/oven_tasks.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY std::vector<OvenRoom> oven_rooms(const Workplace& workplace) {
  std::vector<OvenRoom> out;
  for (const Oven& oven : workplace.ovens) {
    out.push_back({whole_count(oven.racks.holds), whole_minutes(oven.change).count()});
  }
  return out;
}

PLATEWRIGHT_BODY std::vector<std::int64_t> pans_on_racks(const RecipeChain& chain,
                                                         const std::vector<Oven>& ovens) {
  const auto& vessel = chain.scaled->plan.vessel;
  std::vector<std::int64_t> out;
  for (const Oven& oven : ovens) {
    const auto fit =
        vessel ? pans_in_one_place(vessel->name, vessel->bottom, oven.racks) : Rational(1);
    out.push_back(fit ? whole_count(*fit) : 0);
  }
  return out;
}

PLATEWRIGHT_BODY std::variant<OvenTask, NotSaid> oven_task(const RecipeChain& chain,
                                                           const std::vector<Oven>& ovens) {
  OvenTask out;
  out.recipe = chain.name();
  for (std::size_t i = chain.oven_from; i < chain.oven_to; ++i) {
    const Work& work = chain.works[i];
    if (has_unknown_time(work)) return NotSaid::oven_time;
    out.settings.push_back({work.least.count(), work.oven->oven});
  }
  out.on_a_rack = pans_on_racks(chain, ovens);
  const auto none = [&] {
    return std::all_of(out.on_a_rack.begin(), out.on_a_rack.end(),
                       [](std::int64_t pans) { return pans == 0; });
  };
  if (none()) return NotSaid::pan_size;
  for (std::size_t oven = 0; oven < ovens.size(); ++oven) {
    const bool reached =
        std::all_of(out.settings.begin(), out.settings.end(),
                    [&](const OvenSetting& setting) { return ovens[oven].reaches(setting.at); });
    if (!reached) out.on_a_rack[oven] = 0;
  }
  if (none()) return NotSaid::too_hot;
  const auto& vessels = chain.scaled->plan.vessels;
  out.whole_oven = !vessels;
  if (vessels) out.pans = whole_count(vessels->count);
  for (const Oven& oven : ovens) {
    out.racks_high.push_back(whole_count(oven.racks_high(chain.scaled->recipe->stands)));
  }
  const MinuteSpan begins = oven_begins(chain);
  out.soonest = begins.least;
  out.latest = on_the_clock(begins);
  return out;
}

}  // namespace platewright::detail
