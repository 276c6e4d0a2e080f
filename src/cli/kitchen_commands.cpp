// SPDX-License-Identifier: MIT
// card.

#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "cli/planned.hpp"
#include "platewright/card/batch_card.hpp"
#include "platewright/card/label_sheets.hpp"
#include "platewright/card/published_recipe.hpp"
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

/// In the vocabulary of other people's pages; what was changed stands first.
Result published(std::vector<PublishedRecipe> recipes, const CardArguments& arguments) {
  const std::vector<std::string> changes = changes_said(arguments.prices);
  for (PublishedRecipe& recipe : recipes) {
    recipe.cautions.insert(recipe.cautions.begin(), changes.begin(), changes.end());
  }
  Result out;
  out.plain = write_json_ld(recipes);
  out.plain_format = "json-ld";
  return out;
}

/// What a production makes, each recipe before those that use it.
std::vector<PublishedRecipe> published_recipes(const Production& production, const Book& book,
                                               const CardOptions& options) {
  std::vector<PublishedRecipe> out;
  for (const SubRecipePlan& plan : production.sub_recipes) {
    out.push_back(published_recipe(plan.scaled, book, options));
  }
  for (const DishPlan& plan : production.dishes) {
    out.push_back(published_recipe(plan.scaled, book, options));
  }
  return out;
}

Result sheet_result(Sheet sheet, const CardArguments& arguments, unsigned width) {
  Result out{std::move(sheet), {}, width};
  say_changes(arguments.prices, *out.sheet);
  return out;
}

/// The card of one recipe at the size asked for.
Result one_card(const CardArguments& arguments, const Book& as_written, const CardOptions& options,
                const CommonOptions& common, unsigned width, ProblemList& problems) {
  const Event* event = as_written.events.empty() ? nullptr : &as_written.events.front();
  const Book book =
      book_of(as_written, occasion_asked(arguments.prices, as_written, event, problems));
  const Recipe& recipe = the_recipe(book, arguments.recipe, arguments.file);
  const bool json_ld = common.format == "json-ld";
  if (!arguments.batches.empty()) {
    const std::vector<ScaledRecipe> batches = batches_of(recipe, arguments, book);
    if (!json_ld) return sheet_result(batch_card(batches, book, options), arguments, width);
    std::vector<PublishedRecipe> sizes;
    for (const ScaledRecipe& batch : batches) {
      sizes.push_back(published_recipe(batch, book, options));
    }
    return published(std::move(sizes), arguments);
  }
  const ScaledRecipe scaled =
      scale(recipe, plan_from(arguments.scale, recipe, book, book.recipes), book.recipes);
  problems.add_all(safety_warnings(scaled, book.recipes, book.tables.safety));
  if (!arguments.sub_recipes) {
    if (json_ld) return published({published_recipe(scaled, book, options)}, arguments);
    return sheet_result(recipe_card(scaled, book, options), arguments, width);
  }
  const Production production = plan_with_sub_recipes(scaled, book.recipes, book.prices);
  if (json_ld) return published(published_recipes(production, book, options), arguments);
  return sheet_result(production_cards(production, book, options), arguments, width);
}

/// The recipe of an event at the size that the event needs.
const ScaledRecipe& scaled_in(const Production& production, const std::string& recipe) {
  if (const ScaledRecipe* scaled = find_scaled(production, recipe)) return *scaled;
  throw Failure(problems::recipe_not_made(recipe));
}

/// The cards of an event, or that of one of its recipes.
Result planned_cards(const CardArguments& arguments, const Book& book, const CardOptions& options,
                     const CommonOptions& common, unsigned width, ProblemList& problems) {
  const EventPlan plan =
      plan_asked(arguments.prices, book, the_event(book, arguments.file), problems);
  const Book planned = book_of(book, plan.occasion());
  const bool json_ld = common.format == "json-ld";
  if (arguments.recipe.empty()) {
    if (json_ld) {
      return published(published_recipes(plan.production(), planned, options), arguments);
    }
    return sheet_result(event_cards(plan.event(), plan.production(), planned, options), arguments,
                        width);
  }
  const std::string& recipe = the_recipe(book, arguments.recipe, {}).name;
  const ScaledRecipe& scaled = scaled_in(plan.production(), recipe);
  if (json_ld) return published({published_recipe(scaled, planned, options)}, arguments);
  return sheet_result(recipe_card(scaled, planned, options), arguments, width);
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
  const OpenedBook opened = open_book({arguments.file}, problems);
  const Book& book = *opened;
  const CardOptions options = card_options(arguments, common, book);
  const unsigned width = common.large                ? large_card_width
                         : common.measures == "both" ? two_measures_card_width
                                                     : card_width;
  if (arguments.labels || arguments.buffet) {
    return sheet_result(labels_asked(arguments, book, problems), arguments, width);
  }
  const bool sized = asks_a_size(arguments.scale) || !arguments.batches.empty();
  const auto cards = book.events.empty() || sized ? one_card : planned_cards;
  return cards(arguments, book, options, common, width, problems);
}

}  // namespace platewright::cli
