// SPDX-License-Identifier: MIT
#include "cli/planned.hpp"

#include "cli/open_book.hpp"
#include "platewright/costing/current_prices.hpp"
#include "platewright/event/changes.hpp"
#include "platewright/event/cheapest_offers.hpp"
#include "platewright/event/eating.hpp"
#include "platewright/event/safety_warnings.hpp"

namespace platewright::cli {

PriceList prices_for(const PriceOptions& options, const Book& book, const Event* event) {
  std::optional<LocalDay> day = event == nullptr ? std::nullopt : day_of(*event);
  if (!options.day.empty()) {
    day = from_argument("--prices-on", [&] { return read_local_day(options.day); });
  }
  PriceList prices = current_prices(book.prices, day);
  if (options.one_delivery) prices = with_one_delivery(std::move(prices));
  return options.round_unit_prices ? with_unit_prices_rounded(std::move(prices)) : prices;
}

void change_guests_asked(const char* option, const std::string& number, Event& event) {
  const Rational guests = number_above_zero(option, number);
  from_argument(option, [&] { change_guests(event, guests); });
}

void apply_changes(const PriceOptions& options, const Book& book, Occasion& occasion,
                   ProblemList& problems) {
  for (const std::string& text : options.changes) {
    from_argument("--price", [&] {
      change_price(occasion, read_price_change(text, book.tables.units, book.measures));
    });
  }
  for (const std::string& text : options.swaps) {
    from_argument("--swap", [&] { swap_in(occasion, read_swap(text)); });
  }
  problems.add_all(safety_warnings(occasion.book, book.tables.safety));
  problems.add_all(guest_warnings(occasion.event, occasion.book, book.tables.allergens));
  if (!options.guests.empty()) change_guests_asked("--guests", options.guests, occasion.event);
}

void choose_offers(const PriceOptions& options, Occasion& occasion) {
  if (!options.cheapest) return;
  occasion = std::move(with_cheapest_offers(std::vector<Occasion>{std::move(occasion)}).front());
}

Occasion occasion_asked(const PriceOptions& options, const Book& book, const Event* event,
                        ProblemList& problems) {
  Occasion out{event == nullptr ? Event() : *event, book.recipes, prices_for(options, book, event)};
  apply_changes(options, book, out, problems);
  return out;
}

EventPlan plan_asked(const PriceOptions& options, const Book& book, const Event& event,
                     ProblemList& problems) {
  Occasion occasion = occasion_asked(options, book, &event, problems);
  choose_offers(options, occasion);
  return EventPlan(std::move(occasion));
}

std::optional<DayPlan> day_of_plan(const EventPlan& plan, const Book& book) {
  if (!book.workplace) return std::nullopt;
  return plan_day(plan.event(), plan.production(), *book.workplace);
}

Timeline planned_timeline(const EventPlan& plan, const Book& book) {
  Timeline out = plan.timeline(book.tables.safety);
  if (const auto day = day_of_plan(plan, book)) set_planned(*day, out);
  return out;
}

std::vector<DishNotice> notices_of(const EventPlan& plan, const Book& book) {
  return dish_notices(plan, book.tables.allergens, book.tables.safety);
}

Book book_of(const Book& book, const Occasion& occasion) {
  Book out = book;
  out.recipes = occasion.book;
  out.prices = occasion.prices;
  return out;
}

bool changes_anything(const PriceOptions& options) {
  return !options.changes.empty() || !options.swaps.empty() || !options.guests.empty();
}

std::vector<std::string> changes_said(const PriceOptions& options) {
  std::vector<std::string> out;
  const auto add = [&](const std::string& text) { out.push_back("what if: " + text); };
  for (const std::string& text : options.changes) add("price of " + text);
  for (const std::string& text : options.swaps) add("swap " + text);
  if (!options.guests.empty()) add(options.guests + " guests");
  return out;
}

void say_changes(const PriceOptions& options, Sheet& sheet) {
  for (std::string& text : changes_said(options)) sheet.subtitles.push_back(std::move(text));
}

}  // namespace platewright::cli
