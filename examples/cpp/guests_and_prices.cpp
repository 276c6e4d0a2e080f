// SPDX-License-Identifier: MIT
// What a guest pays when more come, or fewer: `guests_and_prices EVENT.yaml 60 84 120`. The event
// is planned anew for each number, since pieces, batches and workers come whole.

#include <iostream>
#include <platewright/costing.hpp>
#include <platewright/event.hpp>
#include <platewright/files.hpp>
#include <string>
#include <vector>

using namespace platewright;

namespace {

void print_prices(const Book& book, const std::vector<std::string>& numbers) {
  const Event& event = book.events.front();
  const Occasion occasion{event, book.recipes, current_prices(book.prices, day_of(event))};
  for (const std::string& number : numbers) {
    Occasion changed = occasion;
    change_guests(changed.event, read_number(number));
    const Quote quote = quote_of(changed);
    std::cout << number << " guests: "
              << as_decimal(quote.price.in(units::currency_unit), quote.currency.minor_digits())
              << " " << quote.currency.code() << " a guest\n";
  }
}

}  // namespace

int main(int count, char** arguments) {
  const std::vector<std::string> given(arguments + 1, arguments + count);
  if (given.size() < 2) {
    std::cerr << "guests_and_prices EVENT.yaml NUMBER...\n";
    return 2;
  }
  ProblemList problems;
  try {
    const auto book = read_book({given.front()}, problems);
    if (book && !book->events.empty()) {
      print_prices(*book, {given.begin() + 1, given.end()});
    }
  } catch (const Failure& failure) {
    problems.add(failure.problem());
  }
  std::cerr << problem_text(problems);
  return problems.has_errors() ? 1 : 0;
}
