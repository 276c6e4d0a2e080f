// SPDX-License-Identifier: MIT
// The C interface against the library that it is made of: the same numbers, and nothing thrown.

#include <string>

#include "platewright/c/platewright.h"
#include "platewright/costing/current_prices.hpp"
#include "platewright/costing/plate_cost.hpp"
#include "platewright/event/event_plan.hpp"
#include "platewright/files/problem_text.hpp"
#include "platewright/files/read_book.hpp"
#include "platewright/yield/yield_answer.hpp"
#include "support/catch.hpp"

namespace platewright::test {
namespace {

/// Freed at the end of the test.
class Reply {
 public:
  Reply(platewright_reply* reply) : reply_(reply) {}
  Reply(const Reply&) = delete;
  Reply& operator=(const Reply&) = delete;
  ~Reply() { platewright_free_reply(reply_); }
  operator const platewright_reply*() const { return reply_; }
  std::string text() const { return platewright_text_of(reply_); }

 private:
  platewright_reply* reply_;
};

std::string supper_file() {
  return std::string(EXAMPLES_DIR) + "/harvest-supper/event.yaml";
}

platewright_reply* supper_for_c() {
  const std::string file = supper_file();
  const char* names[] = {file.c_str()};
  return platewright_read_book(names, 1);
}

Book supper_for_cpp() {
  ProblemList problems;
  return *read_book({supper_file()}, problems);
}

std::string exact(const Money& sum) {
  return as_fraction(sum.in(units::currency_unit));
}

}  // namespace

TEST_CASE("C is given the quote that C++ is given") {
  const Reply read(supper_for_c());
  const Reply asked(platewright_quote_event(platewright_book_of(read), nullptr));
  REQUIRE(platewright_status_of(asked) == PLATEWRIGHT_DONE);
  const platewright_quote& quote = *platewright_quote_of(asked);
  const Book book = supper_for_cpp();
  const Event& event = book.events.front();
  const Quote expected =
      EventPlan(Occasion{event, book.recipes, current_prices(book.prices, day_of(event))}).quote();
  CHECK(quote.price.exact == exact(expected.price));
  CHECK(quote.food.exact == exact(expected.food));
  CHECK(quote.total.exact == exact(expected.total));
  CHECK(quote.margin_share.exact == as_fraction(expected.margin_share));
  CHECK(quote.currency == std::string("USD"));
  // As README.md prints it.
  CHECK(quote.price.exact == std::string("56"));
  CHECK(quote.total.exact == std::string("536487/100"));
  CHECK(quote.total.nearest == 5364.87);
}

TEST_CASE("a null pointer of C is an error and not a crash") {
  const char* names[] = {nullptr};
  for (platewright_reply* given :
       {platewright_read_book(nullptr, 1), platewright_read_book(names, 1),
        platewright_scale_recipe(nullptr, nullptr, PLATEWRIGHT_BY_FACTOR, "1"),
        platewright_cost_recipe(nullptr, nullptr, PLATEWRIGHT_BY_FACTOR, "1"),
        platewright_quote_event(nullptr, nullptr),
        platewright_ask_yield(nullptr, nullptr, nullptr, nullptr, nullptr)}) {
    const Reply reply(given);
    CHECK(platewright_status_of(reply) == PLATEWRIGHT_WRONG_CALL);
    CHECK(reply.text().find("must not be null") != std::string::npos);
  }
  CHECK(platewright_status_of(nullptr) == PLATEWRIGHT_NO_MEMORY);
  CHECK(platewright_text_of(nullptr) != std::string());
  CHECK(platewright_book_of(nullptr) == nullptr);
  CHECK(platewright_scaled_of(nullptr) == nullptr);
  CHECK(platewright_cost_of(nullptr) == nullptr);
  CHECK(platewright_yield_of(nullptr) == nullptr);
  CHECK(platewright_quote_of(nullptr) == nullptr);
  platewright_free_reply(nullptr);
}

}  // namespace platewright::test
