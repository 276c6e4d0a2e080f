// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/nesting.hpp.

#include <algorithm>
#include <map>

#include "platewright/recipe/nesting.hpp"

namespace platewright {

namespace detail {

/// Walks down from one recipe after another, and keeps what it knows. It does not call itself,
/// since it is what keeps others from calling themselves too often.
class NestingWalk {
 public:
  explicit NestingWalk(const RecipeBook& book) : book_(book) {}

  /// Everything below the recipe of that name. A circle ends the walk.
  void walk_from(const std::string& name) {
    const Recipe* recipe = book_.find_recipe(name);
    if (circle_ || recipe == nullptr || levels_.count(name) != 0) return;
    enter(*recipe);
    while (!circle_ && !trail_.empty()) {
      Open& open = trail_.back();
      if (open.next == open.recipe->lines.size()) {
        leave();
      } else if (const Recipe* below = book_.recipe_of(open.recipe->lines[open.next++])) {
        meet(*below);
      }
    }
  }

  /// First name repeated at the end.
  const std::optional<std::vector<std::string>>& circle() const { return circle_; }
  /// The first recipe found that has too many others below it.
  const Recipe* too_deep() const { return too_deep_; }

 private:
  struct Open {
    const Recipe* recipe;
    std::size_t next = 0;  ///< the line to be looked at
    std::size_t levels = 1;
  };

  void enter(const Recipe& recipe) {
    levels_[recipe.name] = 0;  // under way
    trail_.push_back({&recipe});
  }

  void meet(const Recipe& below) {
    const auto known = levels_.find(below.name);
    if (known == levels_.end()) return enter(below);
    if (known->second == 0) return close_circle(below);
    trail_.back().levels = std::max(trail_.back().levels, known->second + 1);
  }

  void leave() {
    const Open done = trail_.back();
    trail_.pop_back();
    levels_[done.recipe->name] = done.levels;
    if (done.levels > most_levels && too_deep_ == nullptr) too_deep_ = done.recipe;
    if (!trail_.empty()) trail_.back().levels = std::max(trail_.back().levels, done.levels + 1);
  }

  void close_circle(const Recipe& met) {
    const auto first = std::find_if(trail_.begin(), trail_.end(),
                                    [&](const Open& open) { return open.recipe == &met; });
    circle_.emplace();
    for (auto open = first; open != trail_.end(); ++open) circle_->push_back(open->recipe->name);
    circle_->push_back(met.name);
  }

  const RecipeBook& book_;
  std::map<std::string, std::size_t> levels_;
  std::vector<Open> trail_;
  std::optional<std::vector<std::string>> circle_;
  const Recipe* too_deep_ = nullptr;
};

PLATEWRIGHT_BODY void check_walked(const NestingWalk& walk) {
  if (walk.circle()) throw Failure(problems::recipe_cycle(*walk.circle()));
  if (const Recipe* recipe = walk.too_deep()) {
    throw Failure(at(problems::recipes_too_deep(recipe->name, most_levels), recipe->place));
  }
}

}  // namespace detail

PLATEWRIGHT_BODY std::optional<std::vector<std::string>> find_cycle(const RecipeBook& book) {
  detail::NestingWalk walk(book);
  for (const auto& [name, recipe] : book.recipes) walk.walk_from(name);
  return walk.circle();
}

PLATEWRIGHT_BODY void check_nesting(const RecipeBook& book, const std::vector<std::string>& names) {
  detail::NestingWalk walk(book);
  for (const std::string& name : names) walk.walk_from(name);
  detail::check_walked(walk);
}

PLATEWRIGHT_BODY void check_nesting(const RecipeBook& book) {
  detail::NestingWalk walk(book);
  for (const auto& [name, recipe] : book.recipes) walk.walk_from(name);
  detail::check_walked(walk);
}

}  // namespace platewright
