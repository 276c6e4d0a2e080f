// SPDX-License-Identifier: MIT
#pragma once
// From the serving back through the steps of every recipe.

#include <cstddef>
#include <map>
#include <optional>
#include <string>

#include "platewright/event/recipe_work.hpp"
#include "platewright/event/timeline.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

namespace detail {

/// Walks back from a moment in elapsed time; each step that is put in moves it.
class BackwardClock {
 public:
  BackwardClock(const Instant& latest, const Instant& soonest, bool open)
      : latest_(latest), soonest_(soonest), open_(open) {}

  const Instant& latest() const { return latest_; }
  /// By the longest of all times that are known.
  const Instant& soonest() const { return soonest_; }
  /// The same where every time is known.
  std::optional<Instant> earliest() const { return open_ ? std::nullopt : std::optional(soonest_); }
  bool open() const { return open_; }

  /// Of a work whose length no one knows the latest moment stays a bound, the earliest is lost.
  void go_back(const Work& work);

  /// An entry that begins now.
  TimelineEntry entry(TimelineKind kind, const Recipe& recipe, std::size_t work) const;

 private:
  Instant latest_;
  Instant soonest_;
  bool open_;
};

/// The earlier of two beginnings, which a sub-recipe has to be ready for.
BackwardClock earlier(const BackwardClock& left, const BackwardClock& right);

using ClocksByName = std::map<std::string, BackwardClock>;

void keep_earlier(ClocksByName& clocks, const std::string& name, const BackwardClock& clock);

/// When a recipe is begun, and when the first of its steps begins that uses a thing by its name.
struct RecipeClocks {
  BackwardClock begin;
  ClocksByName used;

  /// Where no step says that it uses the thing, it is there when the recipe is begun.
  const BackwardClock& needed(const std::string& name) const;
};

/// Where the work begins that is numbered `work` in its recipe; what has no time and no oven is not
/// listed.
void add_entry(const Work& work, std::size_t number, const Recipe& recipe,
               const BackwardClock& clock, Timeline& timeline);

/// Of a recipe that is a dish and is used by others as well: whichever comes first.
void keep_earlier(std::map<std::string, RecipeClocks>& recipes, const std::string& name,
                  const RecipeClocks& clocks);

/// When the first of those that use a sub-recipe needs it.
BackwardClock needed_by(const SubRecipePlan& plan,
                        const std::map<std::string, RecipeClocks>& recipes);

/// Puts in all recipes; gives their clocks by name.
std::map<std::string, RecipeClocks> add_recipes(const Production& production, Timeline& timeline);

}  // namespace detail

/// When each recipe of a production is begun at the soonest, on the clock of the place, by its
/// name: all that follows at its longest, a setting of the oven without a time counted as none. One
/// that takes no time that is written down is begun on the day of the serving, no one knows when:
/// at its midnight. Throws Failure for a step that takes more than a year.
std::map<std::string, LocalTime> soonest_beginnings(const Production& production,
                                                    const ZonedTime& served);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/walk_back.hpp"
#endif
