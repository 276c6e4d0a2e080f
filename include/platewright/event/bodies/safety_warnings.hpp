// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/safety_warnings.hpp.

#include "platewright/event/safety_warnings.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY std::string names_of(const std::vector<std::string>& names) {
  std::string out;
  for (const std::string& name : names) out += (out.empty() ? "" : ", ") + in_quotes(name);
  return out;
}

/// What may be done: FDA Food Code 2022, 3-401.11 and 3-603.11.
PLATEWRIGHT_BODY std::string remedy_of(const PullCheck& check) {
  const std::string cook_on = "cook on to " + both_scales(check.cook_to->at, Rounding::up);
  switch (check.advisory) {
    case Advisory::cook_on:
      return cook_on + "; no notice to guests makes this food safe. Local codes come first";
    case Advisory::unless_held:
      return cook_on +
             ", or hold the roast as long as its card says, or tell guests in writing that it is "
             "undercooked; local codes come first";
    case Advisory::needed:
    case Advisory::not_needed:
    case Advisory::no_minimum:
      break;
  }
  return cook_on +
         ", or tell guests in writing that it is undercooked (FDA Food Code 2022, 3-603.11); local "
         "codes come first";
}

PLATEWRIGHT_BODY void add_temperature_warnings(const Recipe& recipe, const RecipeBook& book,
                                               const SafetyTable& table, ProblemList& out) {
  const TemperatureNotices notices = temperature_notices(recipe, book, table);
  for (const UnknownMinimum& food : notices.not_known) {
    out.add(as_warning(at(problems::safety_not_stated(food.ingredients), recipe.place)));
  }
  for (const UndercookedFood& food : notices.undercooked) {
    const MinimumTemperature& minimum = *food.check.cook_to;
    out.add(as_warning(at(problems::below_the_minimum(recipe.name, names_of(food.ingredients),
                                                      both_scales(food.check.pull, Rounding::down),
                                                      both_scales(minimum.at, Rounding::up) + " (" +
                                                          minimum.source + ", " + minimum.row + ")",
                                                      remedy_of(food.check)),
                          recipe.place)));
  }
}

PLATEWRIGHT_BODY void add_timeline_warnings(const Timeline& timeline, const RecipeBook& book,
                                            ProblemList& out) {
  for (const StandingFood& food : timeline.standing) {
    out.add(
        as_warning(at(problems::stands_too_long(food.recipe, hours_of(food.longest, Rounding::up),
                                                hours_of(*food.limit.within, Rounding::down),
                                                source_words(food.limit.source, food.limit.row)),
                      book.recipe(food.recipe).place)));
  }
  for (const KeptFood& food : timeline.kept) {
    if (food.in_time()) continue;
    out.add(as_warning(at(problems::kept_too_long(food.recipe, day_text(food.made),
                                                  day_text(food.used), day_text(*food.use_by),
                                                  source_words(food.rule->source, food.rule->row)),
                          book.recipe(food.recipe).place)));
  }
  for (const WaitingFood& food : timeline.waiting) {
    out.add(
        as_warning(at(problems::keeping_not_said(food.recipe, hours_of(food.longest, Rounding::up),
                                                 hours_of(*food.limit.within, Rounding::down),
                                                 source_words(food.limit.source, food.limit.row)),
                      book.recipe(food.recipe).place)));
  }
}

}  // namespace detail

PLATEWRIGHT_BODY ProblemList safety_warnings(const RecipeBook& book, const SafetyTable& table) {
  ProblemList out;
  for (const auto& [name, recipe] : book.recipes) {
    detail::add_temperature_warnings(recipe, book, table, out);
    detail::add_step_warnings(recipe, book, table, std::nullopt, out);
  }
  return out;
}

PLATEWRIGHT_BODY ProblemList safety_warnings(const ScaledRecipe& scaled, const RecipeBook& book,
                                             const SafetyTable& table) {
  ProblemList out;
  detail::add_step_warnings(*scaled.recipe, book, table, scaled.plan.piece_weight, out);
  return out;
}

PLATEWRIGHT_BODY ProblemList safety_warnings(const Event& event, const Production& production,
                                             const RecipeBook& book, const SafetyTable& table) {
  ProblemList out = safety_warnings(book, table);
  for (const DishPlan& dish : production.dishes) {
    out.add_all(safety_warnings(dish.scaled, book, table));
  }
  for (const SubRecipePlan& sub_recipe : production.sub_recipes) {
    out.add_all(safety_warnings(sub_recipe.scaled, book, table));
  }
  if (!event.at) return out;
  detail::add_timeline_warnings(make_timeline(event, production, Order{}, table), book, out);
  return out;
}

}  // namespace platewright
