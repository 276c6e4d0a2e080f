// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/production.hpp.

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "platewright/event/production.hpp"

namespace platewright {

PLATEWRIGHT_BODY const ScaledRecipe* find_scaled(const Production& production,
                                                 const std::string& recipe) {
  for (const DishPlan& dish : production.dishes) {
    if (dish.scaled.recipe->name == recipe) return &dish.scaled;
  }
  for (const SubRecipePlan& sub : production.sub_recipes) {
    if (sub.scaled.recipe->name == recipe) return &sub.scaled;
  }
  return nullptr;
}

namespace detail {

PLATEWRIGHT_BODY void append_makers_first(const RecipeBook& book, const std::string& name,
                                          std::set<std::string>& seen,
                                          std::vector<std::string>& order) {
  if (!seen.insert(name).second) return;
  for (const RecipeLine& line : book.recipe(name).lines) {
    if (book.recipe_of(line) != nullptr) append_makers_first(book, line.name, seen, order);
  }
  order.push_back(name);
}

/// What is made is kept line by line.
class PlanSize {
 public:
  void add(const ScaledRecipe& scaled) {
    lines_ += scaled.lines.size() + 1;
    if (lines_ > most_plan_lines) throw Failure(problems::plan_too_large(most_plan_lines));
  }

 private:
  std::size_t lines_ = 0;
};

/// Adds up what recipes take of each other.
class SubRecipeNeeds {
 public:
  void add_lines_of(const ScaledRecipe& user) {
    for (const ScaledLine& line : user.lines) {
      const std::optional<Amount> used = amount_to_buy(line.amount);
      if (line.recipe == nullptr || !used || used->number == 0) continue;
      try {
        add(user.recipe->name, *line.recipe, *used);
      } catch (const Failure& failure) {
        throw Failure(at(failure.problem(), line.line->place));
      }
    }
  }

  /// What was added so far for a recipe, which is not scaled yet; nothing where no one takes any.
  const SubRecipeNeed* find(const std::string& name) const {
    const auto found = needs_.find(name);
    return found == needs_.end() ? nullptr : &found->second;
  }

 private:
  void add(const std::string& user, const Recipe& recipe, const Amount& used) {
    const Rational batches = batches_for(recipe, used);
    const auto [known, is_new] = needs_.try_emplace(recipe.name, SubRecipeNeed{used, 0, {}});
    SubRecipeNeed& need = known->second;
    need.batches += batches;
    if (const auto whole = whole_amount(recipe)) {
      need.needed = platewright::scaled(*whole, need.batches);
    } else if (!is_new) {
      need.needed = sum(need.needed, used);
    }
    if (need.used_by.empty() || need.used_by.back() != user) need.used_by.push_back(user);
  }

  std::map<std::string, SubRecipeNeed> needs_;
};

/// Makes what the dishes take, and what that takes in turn.
PLATEWRIGHT_BODY void add_sub_recipes(const std::vector<std::string>& makers_first,
                                      SubRecipeNeeds& needs, const RecipeBook& book,
                                      const PriceList& prices, PlanSize& size, Production& out) {
  // From the users down, so that a need is complete before the recipe's own lines are added.
  for (auto name = makers_first.rbegin(); name != makers_first.rend(); ++name) {
    const SubRecipeNeed* need = needs.find(*name);
    if (need == nullptr) continue;
    const Recipe& recipe = book.recipe(*name);
    const auto weight = supplied_piece_weight(recipe, book, prices);
    SubRecipePlan plan{scale(recipe, plan_for_factor(recipe, need->batches, book, weight), book),
                       need->needed, need->batches, need->used_by};
    size.add(plan.scaled);
    needs.add_lines_of(plan.scaled);
    out.sub_recipes.push_back(std::move(plan));
  }
  std::reverse(out.sub_recipes.begin(), out.sub_recipes.end());
}

}  // namespace detail

PLATEWRIGHT_BODY Production plan_production(const Event& event, const RecipeBook& book,
                                            const PriceList& prices) {
  std::vector<std::string> dishes;
  for (const MenuLine& line : event.menu) dishes.push_back(line.recipe);
  check_nesting(book, dishes);
  Production out;
  detail::SubRecipeNeeds needs;
  detail::PlanSize size;
  std::set<std::string> seen;
  std::vector<std::string> makers_first;
  for (const MenuLine& line : event.menu) {
    try {
      const Recipe& recipe = book.recipe(line.recipe);
      const Rational wanted = portions_wanted(event, line);
      const auto weight = supplied_piece_weight(recipe, book, prices);
      out.dishes.push_back(
          {line, wanted, scale(recipe, plan_for_portions(recipe, wanted, book, weight), book)});
    } catch (const Failure& failure) {
      throw Failure(at(failure.problem(), line.place));
    }
    size.add(out.dishes.back().scaled);
    needs.add_lines_of(out.dishes.back().scaled);
    detail::append_makers_first(book, line.recipe, seen, makers_first);
  }
  detail::add_sub_recipes(makers_first, needs, book, prices, size, out);
  return out;
}

PLATEWRIGHT_BODY Production plan_with_sub_recipes(const ScaledRecipe& scaled,
                                                  const RecipeBook& book, const PriceList& prices) {
  check_nesting(book, {scaled.recipe->name});
  Production out;
  const Recipe& recipe = *scaled.recipe;
  out.dishes.push_back({{recipe.name, 1, recipe.place}, scaled.plan.portions.value_or(0), scaled});
  detail::SubRecipeNeeds needs;
  detail::PlanSize size;
  size.add(scaled);
  needs.add_lines_of(scaled);
  std::set<std::string> seen;
  std::vector<std::string> makers_first;
  detail::append_makers_first(book, recipe.name, seen, makers_first);
  detail::add_sub_recipes(makers_first, needs, book, prices, size, out);
  return out;
}

}  // namespace platewright
