// SPDX-License-Identifier: MIT
// card.

#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "cli/planned.hpp"
#include "platewright/card/batch_card.hpp"
#include "platewright/card/label_sheets.hpp"
#include "platewright/card/recipe_card.hpp"
#include "platewright/event/safety_warnings.hpp"
#include "platewright/problem/catalogue/recipes.hpp"

namespace platewright::cli {
namespace {

/// A card is read at arm's length: narrower than a page.
constexpr unsigned card_width = 72;
/// Large print fills the same sheet of paper with fewer letters.
constexpr unsigned large_card_width = 48;
/// A column of measures more: as wide as other sheets.
constexpr unsigned two_measures_card_width = 80;

bool asks_a_size(const ScaleOptions& scale) {
  return !scale.portions.empty() || !scale.pieces.empty() || !scale.factor.empty() ||
         !scale.on_hand.empty() || !scale.short_of.empty() || !scale.portion_size.empty();
}

CardOptions card_options(const CardArguments& arguments, const CommonOptions& common,
                         const Book& book) {
  CardOptions out;
  out.system = system_for(common, book.measures);
  out.kitchen = kitchen_wanted(common, book, out.system);
  if (common.measures == "both") out.beside = other_measures(out.system);
  out.cost = arguments.cost;
  out.large = common.large;
  out.date = arguments.date;
  return out;
}

std::vector<ScaledRecipe> batches_of(const Recipe& recipe, const CardArguments& arguments,
                                     const Book& book) {
  std::vector<ScaledRecipe> out;
  for (const std::string& factor : arguments.batches) {
    ScaleOptions size = arguments.scale;
    size.factor = factor;
    const ScalePlan plan =
        from_argument("--batches", [&] { return plan_from(size, recipe, book, book.recipes); });
    out.push_back(scale(recipe, plan, book.recipes));
  }
  return out;
}

/// The card of one recipe at the size asked for.
Result one_card(const CardArguments& arguments, const Book& as_written, const CardOptions& options,
                unsigned width, ProblemList& problems) {
  const Event* event = as_written.events.empty() ? nullptr : &as_written.events.front();
  const Book book =
      book_of(as_written, occasion_asked(arguments.prices, as_written, event, problems));
  const Recipe& recipe = the_recipe(book, arguments.recipe, arguments.file);
  if (!arguments.batches.empty()) {
    return {batch_card(batches_of(recipe, arguments, book), book, options), {}, width};
  }
  const ScaledRecipe scaled =
      scale(recipe, plan_from(arguments.scale, recipe, book, book.recipes), book.recipes);
  problems.add_all(safety_warnings(scaled, book.recipes, book.tables.safety));
  if (!arguments.sub_recipes) return {recipe_card(scaled, book, options), {}, width};
  return {production_cards(plan_with_sub_recipes(scaled, book.recipes, book.prices), book, options),
          {},
          width};
}

/// The recipe of an event at the size that the event needs.
const ScaledRecipe& scaled_in(const Production& production, const std::string& recipe) {
  if (const ScaledRecipe* scaled = find_scaled(production, recipe)) return *scaled;
  throw Failure(problems::recipe_not_made(recipe));
}

Sheet planned_cards(const CardArguments& arguments, const Book& book, const CardOptions& options,
                    ProblemList& problems) {
  const EventPlan plan =
      plan_asked(arguments.prices, book, the_event(book, arguments.file), problems);
  const Book planned = book_of(book, plan.occasion());
  if (arguments.recipe.empty()) {
    return event_cards(plan.event(), plan.production(), planned, options);
  }
  const std::string& recipe = the_recipe(book, arguments.recipe, {}).name;
  return recipe_card(scaled_in(plan.production(), recipe), planned, options);
}

/// Labels and buffet cards: of an event's plan alone.
Sheet labels_asked(const CardArguments& arguments, const Book& book, ProblemList& problems) {
  const EventPlan plan =
      plan_asked(arguments.prices, book, the_event(book, arguments.file), problems);
  if (arguments.buffet) return buffet_sheet(plan.event(), notices_of(plan, book));
  return label_sheet(plan.event(),
                     food_labels(plan, planned_timeline(plan, book), book.tables.allergens));
}

}  // namespace

Result run(const CardArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  const Book book = open_book({arguments.file}, problems);
  const CardOptions options = card_options(arguments, common, book);
  const unsigned width = common.large                ? large_card_width
                         : common.measures == "both" ? two_measures_card_width
                                                     : card_width;
  if (arguments.labels || arguments.buffet) {
    Result result{labels_asked(arguments, book, problems), {}, width};
    say_changes(arguments.prices, *result.sheet);
    return result;
  }
  const bool sized = asks_a_size(arguments.scale) || !arguments.batches.empty();
  if (book.events.empty() || sized) {
    Result result = one_card(arguments, book, options, width, problems);
    say_changes(arguments.prices, *result.sheet);
    return result;
  }
  Result result{planned_cards(arguments, book, options, problems), {}, width};
  say_changes(arguments.prices, *result.sheet);
  return result;
}

}  // namespace platewright::cli
