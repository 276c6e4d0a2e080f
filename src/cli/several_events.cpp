// SPDX-License-Identifier: MIT
#include "cli/several_events.hpp"

#include <algorithm>

#include "cli/open_book.hpp"
#include "cli/planned.hpp"
#include "platewright/costing/converted_prices.hpp"
#include "platewright/event/changes.hpp"
#include "platewright/event/cheapest_offers.hpp"
#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/catalogue/what_if.hpp"

namespace platewright::cli {
namespace {

/// What is changed of names that the event's own book has; where no book has one, all are asked to
/// change it, so that it is said.
PriceOptions changes_of(const Book& book, const EventBooks& books, const PriceOptions& options) {
  const auto meant = [&](const std::string& name) {
    const auto knows = [&](const Book& other) {
      return other.recipes.find_recipe(name) || other.recipes.find_ingredient(name);
    };
    return knows(book) || std::none_of(books.apart.begin(), books.apart.end(), knows);
  };
  PriceOptions out = options;
  out.changes.clear();
  out.swaps.clear();
  for (const std::string& text : options.changes) {
    const bool taken = from_argument("--price", [&] {
      return meant(read_price_change(text, book.tables.units, book.measures).ingredient);
    });
    if (taken) out.changes.push_back(text);
  }
  for (const std::string& text : options.swaps) {
    if (from_argument("--swap", [&] { return meant(read_swap(text).from); })) {
      out.swaps.push_back(text);
    }
  }
  return out;
}

void bring_to(const PriceList& together, PriceList& prices) {
  const Currency own = prices.currency;
  if (own == together.currency) return;
  const auto rate = together.exchange_rates.find(own.code());
  if (rate == together.exchange_rates.end()) {
    throw Failure(problems::exchange_rate_missing(own.code(), together.currency.code()));
  }
  prices = in_currency(std::move(prices), together.currency, rate->second);
}

}  // namespace

std::vector<Occasion> occasions_asked(const PriceOptions& options, const EventBooks& books,
                                      ProblemList& problems) {
  if (!options.guests.empty()) {
    throw WrongArgument(problems::guests_of_several_events(std::to_string(books.apart.size())));
  }
  std::vector<Occasion> out;
  for (const Book& book : books.apart) {
    const PriceOptions own = changes_of(book, books, options);
    out.push_back(occasion_asked(own, book, &book.events.front(), problems));
    bring_to(books.together.prices, out.back().prices);
  }
  return options.cheapest ? with_cheapest_offers(std::move(out)) : out;
}

}  // namespace platewright::cli
