// SPDX-License-Identifier: MIT
#pragma once
// The work of one recipe on the minutes of the day.

#include <cstddef>
#include <string>
#include <vector>

#include "platewright/day/oven_task.hpp"
#include "platewright/event/production.hpp"
#include "platewright/event/recipe_work.hpp"
#include "platewright/problem/body.hpp"

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
  Minute end_of(std::size_t work) const;
};

RecipeChain chain_of(const ScaledRecipe& scaled, std::vector<std::string> used_by);

/// The least and the most that the works from `from` to `to`, without the last, take.
struct MinuteSpan {
  Minute least = 0;
  Minute most = 0;
};

MinuteSpan time_of_works(const RecipeChain& chain, std::size_t from, std::size_t to);

/// The latest of these minutes that is a whole number of five, or else the latest of them.
Minute on_the_clock(const MinuteSpan& minutes);

/// How long its oven takes, as far as that is known.
inline Minute oven_time(const RecipeChain& chain) {
  return time_of_works(chain, chain.oven_from, chain.oven_to).least;
}

/// When its oven may begin, so that it is ready in time.
MinuteSpan oven_begins(const RecipeChain& chain);

/// How far its beginning may move.
Minute slack_of(const RecipeChain& chain);

/// The first minute at which a step uses the recipe called `name`; the beginning where none says
/// so.
Minute needs_at(const RecipeChain& user, const std::string& name);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/detail/recipe_chain.hpp"
#endif
