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

TEST_CASE("C is given the lines of a recipe at its size and their cost") {
  const Reply read(supper_for_c());
  const platewright_book* of_c = platewright_book_of(read);
  const char* name = "lamb leg with a garlic and rosemary rub";
  const Reply scaled_reply(platewright_scale_recipe(of_c, name, PLATEWRIGHT_BY_PIECES, "10"));
  const Reply cost_reply(platewright_cost_recipe(of_c, name, PLATEWRIGHT_BY_PIECES, "10"));
  REQUIRE(platewright_scaled_of(scaled_reply) != nullptr);
  REQUIRE(platewright_cost_of(cost_reply) != nullptr);
  const platewright_scaled& scaled_lines = *platewright_scaled_of(scaled_reply);
  const platewright_cost& costed = *platewright_cost_of(cost_reply);

  const Book book = supper_for_cpp();
  const Recipe& recipe = book.recipes.recipe(name);
  const ScaledRecipe expected =
      scale(recipe, plan_for_pieces(recipe, 10, book.recipes), book.recipes);
  const PlateCost cost =
      plate_cost(expected, book.recipes, current_prices(book.prices, day_of(book.events.front())));
  REQUIRE(scaled_lines.line_count == expected.lines.size());
  REQUIRE(costed.line_count == cost.lines.size());
  Rational sum;
  for (std::size_t i = 0; i < expected.lines.size(); ++i) {
    const ScaledLine& line = expected.lines[i];
    CHECK(scaled_lines.lines[i].name == line.line->name);
    CHECK((scaled_lines.lines[i].amount.unit == nullptr) == line.amount.to_taste());
    if (!line.amount.to_taste()) {
      CHECK(scaled_lines.lines[i].amount.number.exact == as_fraction(line.amount.low()->number));
      CHECK(scaled_lines.lines[i].amount.unit == line.amount.low()->unit.name());
    }
    CHECK(costed.lines[i].cost.exact == exact(cost.lines[i].cost));
    sum += cost.lines[i].cost.in(units::currency_unit);
  }
  CHECK(costed.total.exact == as_fraction(sum));
  CHECK(scaled_lines.pieces.exact == std::string("10"));
  // A roast below its minimum temperature is warned of beside the answer.
  CHECK(scaled_reply.text().find("warning ") != std::string::npos);
}

TEST_CASE("C is told what a cut comes to on the plate") {
  const char* name = "lamb leg, bone-in, roasted";
  const Reply down(platewright_ask_yield(nullptr, name, "12 lb", "6 oz", nullptr));
  REQUIRE(platewright_yield_of(down) != nullptr);
  const platewright_yield& answered = *platewright_yield_of(down);
  // As README.md prints it.
  CHECK(answered.portions.exact == std::string("18"));
  REQUIRE(answered.step_count == 3);
  CHECK(answered.steps[0].stage == std::string("purchased"));
  CHECK(answered.steps[0].weight.number.exact == std::string("12"));
  CHECK(answered.steps[2].weight.unit == std::string("pound"));
  CHECK(answered.steps[1].source != std::string());
  CHECK(answered.steps[2].share.exact == std::string(answered.yield.exact));

  const Reply up(platewright_ask_yield(nullptr, name, nullptr, "6 oz", "18"));
  REQUIRE(platewright_yield_of(up) != nullptr);
  const Ladder ladder = built_in_tables().yields.row(name).ladder;
  const Mass expected = weight_to_buy(ladder, 18, Mass::of(6, units::ounce)).purchased;
  CHECK(platewright_yield_of(up)->to_buy.number.exact == as_fraction(expected.in(units::ounce)));

  const Reply shares(platewright_ask_yield(nullptr, name, nullptr, nullptr, nullptr));
  CHECK(platewright_yield_of(shares)->steps[0].weight.unit == nullptr);
  CHECK(platewright_yield_of(shares)->steps[1].share.exact ==
        std::string(answered.steps[1].share.exact));
}

TEST_CASE("C is told what is wrong in the program's words, and gets no answer") {
  const char* names[] = {"not/there.yaml"};
  const Reply read(platewright_read_book(names, 1));
  CHECK(platewright_status_of(read) == PLATEWRIGHT_HAS_PROBLEMS);
  CHECK(platewright_book_of(read) == nullptr);
  ProblemList problems;
  read_book({"not/there.yaml"}, problems);
  CHECK(read.text() == problem_text(problems));

  const Reply whole(supper_for_c());
  const platewright_book* book = platewright_book_of(whole);
  for (const char* number : {"", "0", "-3", "many", "1e9999", "\xff", "1/0"}) {
    const Reply reply(
        platewright_scale_recipe(book, "chicken stock", PLATEWRIGHT_BY_FACTOR, number));
    CHECK(platewright_status_of(reply) == PLATEWRIGHT_HAS_PROBLEMS);
    CHECK(platewright_scaled_of(reply) == nullptr);
    CHECK(reply.text().find("in      number\n") != std::string::npos);
  }
  const Reply unknown(platewright_ask_yield(book, "lamb lag", nullptr, nullptr, nullptr));
  CHECK(platewright_status_of(unknown) == PLATEWRIGHT_HAS_PROBLEMS);
  const Reply nothing_weighed(platewright_ask_yield(book, "garlic", nullptr, nullptr, "20"));
  CHECK(platewright_status_of(nothing_weighed) == PLATEWRIGHT_HAS_PROBLEMS);
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
