// SPDX-License-Identifier: MIT
#pragma once
// The work of one recipe on the minutes of the day.

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "platewright/day/oven_task.hpp"
#include "platewright/event/production.hpp"
#include "platewright/event/recipe_work.hpp"

namespace platewright::detail {

/// One recipe of a production, at one size. `begins` is filled when it is placed.
struct RecipeChain {
  const ScaledRecipe* scaled = nullptr;
  std::vector<std::string> used_by;  ///< empty for a dish
  std::vector<Work> works;
  std::size_t oven_from =
      0;  ///< the works `oven_from` to `oven_to`, without the last, are the oven
  std::size_t oven_to = 0;
  Minute ready = 0;       ///< when it is served, or used
  Minute sooner = 0;      ///< that its oven is kept from the latest, so that hands are free
  Minute first_load = 0;  ///< that goes in first
  Minute last_load = 0;
  std::vector<Minute> begins = {};

  const std::string& name() const { return scaled->recipe->name; }
  bool has_oven() const { return oven_from < oven_to; }
  Minute begin() const { return begins.empty() ? ready : begins.front(); }
  Minute end_of(std::size_t work) const {
    return work + 1 < begins.size() ? begins[work + 1] : ready;
  }
};

inline RecipeChain chain_of(const ScaledRecipe& scaled, std::vector<std::string> used_by) {
  RecipeChain out;
  out.scaled = &scaled;
  out.used_by = std::move(used_by);
  out.works = work_of(scaled);
  for (std::size_t i = 0; i < out.works.size(); ++i) {
    if (out.works[i].kind != WorkKind::oven) continue;
    if (!out.has_oven()) out.oven_from = i;
    out.oven_to = i + 1;
  }
  return out;
}

/// The least and the most that the works from `from` to `to`, without the last, take.
struct MinuteSpan {
  Minute least = 0;
  Minute most = 0;
};

inline MinuteSpan time_of_works(const RecipeChain& chain, std::size_t from, std::size_t to) {
  MinuteSpan out;
  for (std::size_t i = from; i < to; ++i) {
    out.least += chain.works[i].least.count();
    out.most += chain.works[i].most.count();
  }
  return out;
}

/// The latest of these minutes that is a whole number of five, or else the latest of them.
inline Minute on_the_clock(const MinuteSpan& minutes) {
  const Minute whole = minutes.most - (minutes.most % day_grid + day_grid) % day_grid;
  return whole < minutes.least ? minutes.most : whole;
}

/// How long its oven takes, as far as that is known.
inline Minute oven_time(const RecipeChain& chain) {
  return time_of_works(chain, chain.oven_from, chain.oven_to).least;
}

/// When its oven may begin, so that it is ready in time.
inline MinuteSpan oven_begins(const RecipeChain& chain) {
  const MinuteSpan after = time_of_works(chain, chain.oven_to, chain.works.size());
  const Minute out_by = chain.ready - oven_time(chain);
  const Minute soonest = out_by - after.most;
  return {soonest, std::max(soonest, out_by - after.least - chain.sooner)};
}

/// How far its beginning may move.
inline Minute slack_of(const RecipeChain& chain) {
  const MinuteSpan all = time_of_works(chain, 0, chain.works.size());
  return all.most - all.least;
}

/// The first minute at which a step uses the recipe called `name`; the beginning where none says
/// so.
inline Minute needs_at(const RecipeChain& user, const std::string& name) {
  for (std::size_t i = 0; i < user.works.size(); ++i) {
    const MethodStep* step = user.works[i].step;
    if (step == nullptr) continue;
    if (std::find(step->uses.begin(), step->uses.end(), name) != step->uses.end()) {
      return user.begins[i];
    }
  }
  return user.begin();
}

}  // namespace platewright::detail
