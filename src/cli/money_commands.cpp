// cost, quote, order.

#include "cli/books.hpp"
#include "cli/commands.hpp"
#include "platewright/card/cost_sheet.hpp"
#include "platewright/card/order_sheet.hpp"
#include "platewright/card/quote_sheet.hpp"
#include "platewright/problem/catalogue/quotes.hpp"

namespace platewright::cli {

Result run(const CostArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const Book book = open_book({arguments.file}, problems);
  if (!book.events.empty() && arguments.recipe.empty()) {
    const Event& event = the_event(book, arguments.file);
    const Production production = plan_production(event, book.recipes, book.prices);
    const EventCost cost = event_cost(production, book.recipes, book.prices);
    return {event_cost_sheet(event, cost, book.prices), {}, 80};
  }
  const Recipe& recipe = the_recipe(book, arguments.recipe, arguments.file);
  const ScaledRecipe scaled = scale(recipe, plan_from(arguments.scale, recipe, book));
  return {cost_sheet(plate_cost(scaled, book.recipes, book.prices), book.prices), {}, 80};
}

Result run(const QuoteArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const Book book = open_book({arguments.file}, problems);
  const Event& event = the_event(book, arguments.file);
  if (!event.has_terms) {
    throw Failure(at(problems::quote_terms_missing(in_quotes(event.name)), event.place));
  }
  const Production production = plan_production(event, book.recipes, book.prices);
  const EventCost cost = event_cost(production, book.recipes, book.prices);
  const Quote quote = quote_for(event, cost, book.prices);
  return {quote_sheet(event, quote, book.prices.currency), {}, 80};
}

Result run(const OrderArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const Book book = open_book({arguments.file}, problems);
  const Event& event = the_event(book, arguments.file);
  const Production production = plan_production(event, book.recipes, book.prices);
  const Order order = make_order(event, production, book.recipes, book.prices);
  return {order_sheet(event, order, book.prices), {}, 80};
}

}  // namespace platewright::cli
