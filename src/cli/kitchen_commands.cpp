// card, yield, timeline.

#include "cli/books.hpp"
#include "cli/commands.hpp"
#include "platewright/card/recipe_card.hpp"
#include "platewright/card/timeline_sheet.hpp"
#include "platewright/card/yield_sheet.hpp"
#include "platewright/event/make_timeline.hpp"
#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/quantity/read_amount.hpp"

namespace platewright::cli {
namespace {

/// A card is read at arm's length: narrower than a page.
constexpr unsigned card_width = 72;

bool asks_a_size(const ScaleOptions& scale) {
  return !scale.portions.empty() || !scale.pieces.empty() || !scale.factor.empty() ||
         !scale.on_hand.empty();
}

CardOptions card_options(const CommonOptions& common, const Book& book) {
  return CardOptions{system_for(common, book.measures), common.measures == "both"};
}

/// The recipe of an event at the size that the event needs.
const ScaledRecipe& scaled_in(const Production& production, const std::string& recipe,
                              const Book& book) {
  const Recipe& wanted = book.recipes.recipe(recipe);
  for (const DishPlan& dish : production.dishes) {
    if (dish.scaled.recipe == &wanted) return dish.scaled;
  }
  for (const SubRecipePlan& sub : production.sub_recipes) {
    if (sub.scaled.recipe == &wanted) return sub.scaled;
  }
  throw Failure(problems::recipe_not_made(recipe));
}

}  // namespace

Result run(const CardArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  const Book book = open_book({arguments.file}, problems);
  const CardOptions options = card_options(common, book);
  const bool of_event = !book.events.empty() && !asks_a_size(arguments.scale);
  if (!of_event) {
    const Recipe& recipe = the_recipe(book, arguments.recipe, arguments.file);
    const ScaledRecipe scaled = scale(recipe, plan_from(arguments.scale, recipe, book));
    return {recipe_card(scaled, book, options), {}, card_width};
  }
  const Event& event = the_event(book, arguments.file);
  const Production production = plan_production(event, book.recipes, book.prices);
  if (arguments.recipe.empty()) {
    return {event_cards(event, production, book, options), {}, card_width};
  }
  return {recipe_card(scaled_in(production, arguments.recipe, book), book, options), {}, card_width};
}

Result run(const YieldArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  Book book{MeasuringSystem::us, built_in_tables(), {}, {}, {}, {}, {}};
  if (!arguments.books.empty()) book = open_book(arguments.books, problems);
  const Ingredient* own = book.recipes.find_ingredient(arguments.name);
  YieldRow row;
  if (own != nullptr) {
    row.name = own->name;
    row.ladder = own->ladder;
  } else {
    row = book.tables.yields.row(arguments.name);
  }
  const auto mass = [&](const std::string& text) -> std::optional<Mass> {
    if (text.empty()) return std::nullopt;
    return to_mass(read_amount(text, book.tables.units, book.measures));
  };
  YieldQuestion question;
  question.buy = mass(arguments.buy);
  question.portion = mass(arguments.portion);
  question.piece = mass(arguments.piece);
  if (!arguments.guests.empty()) question.guests = read_number(arguments.guests);
  if (question.guests && !question.portion) throw Failure(problems::portion_missing());
  const KitchenView view(system_for(common, book.measures), book.tables.units);
  return {yield_sheet(row.name, row.ladder, question, view), {}, 80};
}

Result run(const TimelineArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const Book book = open_book({arguments.file}, problems);
  const Event& event = the_event(book, arguments.file);
  const Production production = plan_production(event, book.recipes, book.prices);
  const Order order = make_order(event, production, book.recipes, book.prices);
  return {timeline_sheet(event, make_timeline(event, production, order)), {}, 80};
}

}  // namespace platewright::cli
