// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/taken.hpp.

#include <algorithm>
#include <cstddef>
#include <map>

#include "platewright/recipe/taken.hpp"

namespace platewright {

namespace detail {

/// True for a line that twice the batch takes twice of. A share of other lines is one where all of
/// these are.
PLATEWRIGHT_BODY bool follows_the_batch(const RecipeLine& line, const Recipe& recipe,
                                        const RecipeBook& book) {
  if (const WeightShare* share = line.amount.share()) {
    const std::vector<std::size_t> of = lines_shared(*share, recipe, book);
    return std::all_of(of.begin(), of.end(), [&](const std::size_t i) {
      return follows_the_batch(recipe.lines[i], recipe, book);
    });
  }
  return line.scale == ScalingRule::proportional || line.scale == ScalingRule::held_back ||
         follows_pieces(line.scale);
}

/// Adds up what a recipe takes of one name, to any depth. Needs a book without circles.
class TakenCount {
 public:
  /// Counted in `unit` at `stage`, or as it comes from the store where there is none.
  TakenCount(const std::string& name, const Unit& unit, std::optional<Stage> stage,
             const RecipeBook& book)
      : name_(name), unit_(unit), stage_(stage), book_(book) {}

  /// One tested batch; 0 where nothing below it takes any.
  Rational of_batch(const Recipe& recipe) {
    if (const auto known = batches_.find(recipe.name); known != batches_.end()) {
      return known->second;
    }
    Rational out;
    for (const RecipeLine& line : recipe.lines) {
      if (std::find(names_.begin(), names_.end(), line.name) == names_.end()) {
        names_.push_back(line.name);
      }
      try {
        out += of_line(line, recipe);
      } catch (const Failure& failure) {
        throw Failure(at(failure.problem(), line.place));
      }
    }
    return batches_[recipe.name] = out;
  }

  const std::vector<std::string>& takers() const { return takers_; }
  /// Of all lines that were looked at.
  const std::vector<std::string>& names() const { return names_; }

 private:
  Rational of_line(const RecipeLine& line, const Recipe& recipe) {
    const auto amount = amount_to_buy(tested_amount(line, recipe, book_));
    if (!amount || amount->number == 0) return 0;
    if (line.name == name_) {
      if (takers_.empty() || takers_.back() != recipe.name) takers_.push_back(recipe.name);
      if (!follows_the_batch(line, recipe, book_)) {
        throw Failure(problems::short_line_unusable(name_, name_of(line.scale)));
      }
      return taken(line, *amount);
    }
    const Recipe* below = book_.recipe_of(line);
    return below == nullptr ? Rational(0) : of_sub_recipe(line, *below, *amount, recipe);
  }

  Rational of_sub_recipe(const RecipeLine& line, const Recipe& recipe, const Amount& amount,
                         const Recipe& user) {
    const Rational in_one = of_batch(recipe);
    if (in_one == 0) return 0;
    if (!follows_the_batch(line, user, book_)) {
      throw Failure(problems::short_line_unusable(line.name, name_of(line.scale)));
    }
    if (recipe.whole_batches) throw Failure(problems::short_in_wholes(name_, line.name, "batch"));
    if (recipe.tested) {
      throw Failure(problems::short_in_wholes(name_, line.name, recipe.tested->piece));
    }
    return batches_for(recipe, amount) * in_one;
  }

  Rational taken(const RecipeLine& line, const Amount& amount) const {
    const Ingredient* ingredient = book_.find_ingredient(name_);
    if (ingredient == nullptr) return in_unit(amount, unit_).number;
    const Rational purchased = as_purchased(amount, line.stage.value_or(usual_stage(*ingredient)),
                                            *ingredient, unit_, line.preparation)
                                   .number;
    return stage_ ? purchased * yield_to(*ingredient, *stage_) : purchased;
  }

  const std::string& name_;
  const Unit& unit_;
  std::optional<Stage> stage_;
  const RecipeBook& book_;
  std::map<std::string, Rational> batches_;
  std::vector<std::string> takers_;
  std::vector<std::string> names_;
};

}  // namespace detail

PLATEWRIGHT_BODY Taken taken_of(const Recipe& recipe, const std::string& name, const Unit& unit,
                                const RecipeBook& book, std::optional<Stage> stage) {
  check_nesting(book, {recipe.name});
  detail::TakenCount count(name, unit, stage, book);
  const Rational number = count.of_batch(recipe);
  if (number == 0) {
    throw Failure(problems::name_unknown("line", name, count.names(),
                                         "name a line of the recipe or of one that it uses"));
  }
  return {number, count.takers()};
}

}  // namespace platewright
