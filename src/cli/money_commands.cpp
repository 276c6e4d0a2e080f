// SPDX-License-Identifier: MIT
// cost, plates, quote, budget, order.

#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "cli/planned.hpp"
#include "cli/several_events.hpp"
#include "platewright/card/cost_sheet.hpp"
#include "platewright/card/delivery_note.hpp"
#include "platewright/card/kitchen_notices.hpp"
#include "platewright/card/order_sheet.hpp"
#include "platewright/card/quote_sheet.hpp"
#include "platewright/card/what_if_sheets.hpp"
#include "platewright/event/break_even.hpp"
#include "platewright/event/changes.hpp"
#include "platewright/event/cheapest_offers.hpp"
#include "platewright/event/order_from.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/quotes.hpp"
#include "platewright/problem/catalogue/what_if.hpp"
#include "platewright/quantity/read_amount.hpp"

namespace platewright::cli {
namespace {

/// The event of a file with its prices, unchanged. Throws Failure for an event without terms.
Occasion occasion_of(const Book& book, const std::string& file, const PriceOptions& options) {
  const Event& event = the_event(book, file);
  if (!event.has_terms) {
    throw Failure(at(problems::quote_terms_missing(in_quotes(event.name)), event.place));
  }
  Occasion out{event, book.recipes, prices_for(options, book, &event)};
  choose_offers(options, out);
  return out;
}

std::vector<Rational> numbers_of_guests(const std::vector<std::string>& texts) {
  std::vector<Rational> out;
  for (const std::string& text : texts) out.push_back(number_above_zero("--guest-table", text));
  return out;
}

MarginRisk risk_asked(const QuoteArguments& arguments, const Occasion& occasion, const Quote& quote,
                      const PriceList& history) {
  const auto costs = uncertain_costs(occasion, history);
  return from_argument("--floor", [&] {
    return margin_risk(quote, costs,
                       {read_share(arguments.floor), arguments.seed, arguments.draws});
  });
}

/// The answer to the question asked of the quote; the quote itself where there is none.
Sheet answer(const QuoteArguments& arguments, const EventPlan& plan, const Book& book) {
  const Occasion& occasion = plan.occasion();
  const Event& event = plan.event();
  if (!arguments.guest_table.empty()) {
    return guest_table_sheet(event, guest_table(occasion, numbers_of_guests(arguments.guest_table)),
                             occasion.prices);
  }
  if (!arguments.movers.empty()) {
    const Rational change = from_argument("--movers", [&] { return read_share(arguments.movers); });
    const auto movers = from_argument("--movers", [&] { return price_movers(occasion, change); });
    return movers_sheet(event, movers, change, occasion.prices);
  }
  if (arguments.invoice) return invoice_sheet(event, make_invoice(plan));
  const Quote quote = plan.quote();
  if (!arguments.why.empty()) {
    const EventCost cost = plan.cost();
    return from_argument(
        "--why", [&] { return why_sheet(event, cost, quote, arguments.why, occasion.prices); });
  }
  if (!arguments.floor.empty()) {
    return margin_risk_sheet(event, quote, risk_asked(arguments, occasion, quote, book.prices),
                             occasion.prices);
  }
  if (!arguments.client) {
    Sheet sheet = quote_sheet(event, quote, break_even(occasion));
    for (Box& box : kitchen_notices(notices_of(plan, book))) sheet.add(std::move(box));
    return sheet;
  }
  return client_quote_sheet(event, quote, notices_of(plan, book));
}

/// What is asked of the plate cost; nothing where no option asks. The Q factor is that of the
/// event's quote where none is given.
std::optional<PlatePriceQuestion> plate_question(const CostArguments& arguments,
                                                 const Event* event) {
  const bool asked =
      !arguments.q_factor.empty() || !arguments.at_price.empty() || !arguments.food_cost.empty();
  if (!asked) return std::nullopt;
  PlatePriceQuestion out;
  if (event != nullptr) out.q_factor = event->terms.q_factor;
  if (!arguments.q_factor.empty()) {
    out.q_factor = from_argument("--q-factor", [&] { return read_share(arguments.q_factor); });
  }
  if (!arguments.at_price.empty()) {
    out.price =
        Money::of(number_above_zero("--at-price", arguments.at_price), units::currency_unit);
  }
  if (!arguments.food_cost.empty()) {
    out.food_share = from_argument("--food-cost", [&] { return read_share(arguments.food_cost); });
  }
  return out;
}

std::optional<PlatePrice> plate_price_asked(const Money& plate,
                                            const std::optional<PlatePriceQuestion>& question) {
  if (!question) return std::nullopt;
  return from_argument("the plate's price", [&] { return plate_price(plate, *question); });
}

Sheet event_answer(const CostArguments& arguments, const EventPlan& plan) {
  const Occasion& occasion = plan.occasion();
  const EventCost cost = plan.cost();
  if (!arguments.why.empty()) {
    return from_argument(
        "--why", [&] { return why_sheet(occasion.event, cost, arguments.why, occasion.prices); });
  }
  const auto question = plate_question(arguments, &occasion.event);
  const Money plate = question ? food_of_full_price(occasion.event, cost) : Money();
  return event_cost_sheet(occasion.event, cost, occasion.prices,
                          plate_price_asked(plate, question));
}

Sheet recipe_answer(const CostArguments& arguments, const PlateCost& cost, const Event* event,
                    const PriceList& prices) {
  if (!arguments.why.empty()) {
    return from_argument("--why", [&] { return why_sheet(cost, arguments.why, prices); });
  }
  return cost_sheet(
      cost, prices,
      plate_price_asked(cost.per_portion.value_or(cost.total), plate_question(arguments, event)));
}

Sheet planned_event_cost(const CostArguments& arguments, Occasion occasion) {
  choose_offers(arguments.prices, occasion);
  return event_answer(arguments, EventPlan(std::move(occasion)));
}

Sheet recipe_cost(const CostArguments& arguments, const Book& book, Occasion occasion,
                  const Event* event) {
  const std::string& name = the_recipe(book, arguments.recipe, arguments.file).name;
  const Recipe& recipe = occasion.book.recipe(name);
  const ScaledRecipe scaled =
      scale(recipe, plan_from(arguments.scale, recipe, book, occasion.book), occasion.book);
  if (arguments.prices.cheapest) {
    occasion.prices = with_cheapest_offers(scaled, occasion.book, occasion.prices);
  }
  return recipe_answer(arguments, plate_cost(scaled, occasion.book, occasion.prices), event,
                       occasion.prices);
}

/// Those of the files named; where these hold none, as an event's, all of the book.
std::vector<std::string> recipes_meant(const Book& book, const std::vector<std::string>& files) {
  std::vector<std::string> out = book.main_recipes;
  if (!out.empty()) return out;
  for (const auto& [name, recipe] : book.recipes.recipes) out.push_back(name);
  if (out.empty()) throw Failure(problems::nothing_to_do(files.front(), "recipe"));
  return out;
}

/// What was changed of the prices, and how they are rounded.
void say_prices(const PriceOptions& options, Sheet& sheet) {
  say_changes(options, sheet);
  if (options.round_unit_prices) {
    sheet.subtitles.push_back("the price of a unit rounded before it is multiplied");
  }
}

}  // namespace

Result run(const CostArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const OpenedBook opened = open_book({arguments.file}, problems);
  const Book& book = *opened;
  const bool whole_event = !book.events.empty() && arguments.recipe.empty();
  const Event* event = book.events.empty() ? nullptr : &book.events.front();
  Occasion occasion = occasion_asked(arguments.prices, book, event, problems);
  Sheet sheet = whole_event ? planned_event_cost(arguments, std::move(occasion))
                            : recipe_cost(arguments, book, std::move(occasion), event);
  say_prices(arguments.prices, sheet);
  return {std::move(sheet), {}, 80};
}

Result run(const PlatesArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const OpenedBook opened = open_book(arguments.files, problems);
  const Book& book = *opened;
  const Event* event = book.events.empty() ? nullptr : &book.events.front();
  const Occasion occasion = occasion_asked(arguments.prices, book, event, problems);
  const auto costs =
      cost_of_recipes(recipes_meant(book, arguments.files), occasion.book, occasion.prices);
  Sheet sheet = plate_costs_sheet(costs, occasion.prices);
  say_prices(arguments.prices, sheet);
  return {std::move(sheet), {}, 80};
}

Result run(const QuoteArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const OpenedBook opened = open_book({arguments.file}, problems);
  const Book& book = *opened;
  Occasion occasion = occasion_of(book, arguments.file, arguments.prices);
  if (!changes_anything(arguments.prices) && arguments.agreed_price.empty() &&
      arguments.turn_up.empty()) {
    return {answer(arguments, EventPlan(std::move(occasion)), book), {}, 80};
  }
  const Quote before = quote_of(occasion);
  apply_changes(arguments.prices, book, occasion, problems);
  choose_offers(arguments.prices, occasion);
  if (!arguments.agreed_price.empty()) {
    occasion.event.terms.agreed_price = Money::of(
        number_above_zero("--agreed-price", arguments.agreed_price), units::currency_unit);
  }
  if (!arguments.turn_up.empty()) {
    occasion.event.terms.agreed_price = before.price;
    change_guests_asked("--turn-up", arguments.turn_up, occasion.event);
  }
  const EventPlan plan(std::move(occasion));
  Sheet sheet = answer(arguments, plan, book);
  say_changes(arguments.prices, sheet);
  if (!arguments.turn_up.empty()) {
    sheet.subtitles.push_back("what if: " + arguments.turn_up +
                              " guests come, at the price quoted");
  }
  if (!arguments.agreed_price.empty()) {
    sheet.subtitles.push_back("what if: " + arguments.agreed_price + " agreed for a guest");
  }
  if (sheet.kind == SheetKind::quote) {
    sheet.blocks.insert(sheet.blocks.begin(), what_if_table(before, plan.quote(), plan.prices()));
  }
  return {std::move(sheet), {}, 80};
}

Result run(const BudgetArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const OpenedBook opened = open_book({arguments.file}, problems);
  const Book& book = *opened;
  const Occasion occasion = occasion_of(book, arguments.file, arguments.prices);
  Budget budget;
  budget.price = Money::of(number_above_zero("--price", arguments.price), units::currency_unit);
  budget.margin = from_argument("--margin", [&] { return read_share(arguments.margin); });
  budget.dish = arguments.dish;
  budget.cuts = arguments.cuts;
  for (const std::string& text : arguments.portions) {
    budget.portions.push_back(weight_above_zero("--portion", text, book));
  }
  const Unit weight =
      read_amount(arguments.portions.front(), book.tables.units, book.measures).unit;
  const BudgetAnswer answer =
      from_argument("the budget", [&] { return turn_round(occasion, budget); });
  return {budget_sheet(occasion.event, budget, answer, weight, occasion.prices), {}, 80};
}

namespace {

/// The order's sheet, or the notes of its deliveries.
Sheet order_answer(const OrderArguments& arguments, const std::vector<Occasion>& occasions,
                   Order order, const Book& book) {
  std::vector<Event> events;
  for (const Occasion& occasion : occasions) events.push_back(occasion.event);
  const PriceList& prices = occasions.front().prices;
  std::optional<LocalTime> ordered;
  if (!arguments.ordered.empty()) {
    ordered = from_argument("--ordered", [&] { return read_local_time(arguments.ordered); });
  }
  if (!arguments.supplier.empty()) {
    order = from_argument("--supplier", [&] { return order_from(arguments.supplier, order); });
  }
  if (arguments.delivery_notes) {
    return delivery_notes_sheet(events, order, book.tables.safety);
  }
  Sheet sheet = order_sheet(events, order, prices, ordered);
  if (arguments.prices.cheapest || !arguments.supplier.empty()) return sheet;
  Box box = cheaper_offers_box(cheaper_offers(occasions), prices);
  if (!box.lines.empty()) sheet.add(std::move(box));
  return sheet;
}

}  // namespace

Result run(const OrderArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const EventBooks books = open_events(arguments.files, problems);
  const Event& one = the_event(books.together, arguments.files.front());
  Sheet sheet(SheetKind::order);
  if (books.apart.size() == 1) {
    const EventPlan plan = plan_asked(arguments.prices, books.together, one, problems);
    sheet = order_answer(arguments, {plan.occasion()}, plan.order(), books.together);
  } else {
    const auto occasions = occasions_asked(arguments.prices, books, problems);
    sheet = order_answer(arguments, occasions, order_of_day(occasions), books.together);
  }
  say_changes(arguments.prices, sheet);
  return {std::move(sheet), {}, 80};
}

}  // namespace platewright::cli
