// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/detail/recipe_chain.hpp.

#include <algorithm>
#include <utility>

#include "platewright/day/detail/recipe_chain.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY Minute RecipeChain::end_of(std::size_t work) const {
  return work + 1 < begins.size() ? begins[work + 1] : ready;
}

PLATEWRIGHT_BODY RecipeChain chain_of(const ScaledRecipe& scaled,
                                      std::vector<std::string> used_by) {
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

PLATEWRIGHT_BODY MinuteSpan time_of_works(const RecipeChain& chain, std::size_t from,
                                          std::size_t to) {
  MinuteSpan out;
  for (std::size_t i = from; i < to; ++i) {
    out.least += chain.works[i].least.count();
    out.most += chain.works[i].most.count();
  }
  return out;
}

PLATEWRIGHT_BODY Minute on_the_clock(const MinuteSpan& minutes) {
  const Minute whole = minutes.most - (minutes.most % day_grid + day_grid) % day_grid;
  return whole < minutes.least ? minutes.most : whole;
}

PLATEWRIGHT_BODY MinuteSpan oven_begins(const RecipeChain& chain) {
  const MinuteSpan after = time_of_works(chain, chain.oven_to, chain.works.size());
  const Minute out_by = chain.ready - oven_time(chain);
  const Minute soonest = out_by - after.most;
  return {soonest, std::max(soonest, out_by - after.least - chain.sooner)};
}

PLATEWRIGHT_BODY Minute slack_of(const RecipeChain& chain) {
  const MinuteSpan all = time_of_works(chain, 0, chain.works.size());
  return all.most - all.least;
}

PLATEWRIGHT_BODY Minute needs_at(const RecipeChain& user, const std::string& name) {
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
