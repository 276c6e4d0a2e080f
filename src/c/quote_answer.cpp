// SPDX-License-Identifier: MIT
// The quote of a book's event.

#include "c/reply.hpp"
#include "platewright/costing/current_prices.hpp"
#include "platewright/event/changes.hpp"
#include "platewright/event/eating.hpp"
#include "platewright/event/event_plan.hpp"
#include "platewright/event/safety_warnings.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/quotes.hpp"

namespace platewright::c {
namespace {

const Event& event_of(const Book& book) {
  if (book.events.empty()) {
    throw Failure(problems::nothing_to_do(book.files.empty() ? "" : book.files.front(), "event"));
  }
  const Event& event = book.events.front();
  if (!event.has_terms) {
    throw Failure(at(problems::quote_terms_missing(in_quotes(event.name)), event.place));
  }
  return event;
}

/// The event with its mix of guests in another number.
Event event_for(const Event& as_written, const char* guests) {
  Event event = as_written;
  if (guests == nullptr) return event;
  const Rational heads = number_typed("guests", guests);
  of_argument("guests", [&] { change_guests(event, heads); });
  return event;
}

void keep(const std::string& event, const Quote& quote, platewright_reply& reply) {
  reply.quote = platewright_quote{kept(reply, event),
                                  kept(reply, quote.currency.code()),
                                  kept(reply, quote.guests),
                                  kept(reply, quote.food),
                                  kept(reply, quote.cost),
                                  kept(reply, quote.price),
                                  kept(reply, quote.subtotal),
                                  kept(reply, quote.billed_total),
                                  kept(reply, quote.service),
                                  kept(reply, quote.gratuity),
                                  kept(reply, quote.tax),
                                  kept(reply, quote.total),
                                  kept(reply, quote.deposit),
                                  kept(reply, quote.margin),
                                  kept(reply, quote.margin_share),
                                  kept(reply, quote.food_share)};
}

}  // namespace
}  // namespace platewright::c

using namespace platewright;

extern "C" {

platewright_reply* platewright_quote_event(const platewright_book* book, const char* guests) {
  if (book == nullptr) return c::wrong_call("book");
  return c::answered([&](platewright_reply& reply, ProblemList& problems) {
    const Book& asked = book->value;
    Event event = c::event_for(c::event_of(asked), guests);
    PriceList prices = current_prices(asked.prices, day_of(event));
    problems.add_all(guest_warnings(event, asked.recipes, asked.tables.allergens));
    const EventPlan plan(Occasion{std::move(event), asked.recipes, std::move(prices)});
    problems.add_all(safety_warnings(plan, asked.tables.safety));
    c::keep(plan.event().name, plan.quote(), reply);
  });
}

}  // extern "C"
