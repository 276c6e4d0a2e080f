// SPDX-License-Identifier: MIT
#include "c/reply.hpp"

#include <utility>

#include "platewright/files/problem_text.hpp"
#include "platewright/number/nearest_double.hpp"
#include "platewright/number/read.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/version.hpp"

namespace platewright::c {
namespace {

/// The same reply without an answer.
void take_back(platewright_reply& reply, platewright_status status, std::string text) {
  reply.book.reset();
  reply.scaled.reset();
  reply.cost.reset();
  reply.yield.reset();
  reply.quote.reset();
  reply.status = status;
  reply.text = std::move(text);
}

void fill(platewright_reply& reply,
          const std::function<void(platewright_reply&, ProblemList&)>& work) {
  ProblemList problems;
  try {
    work(reply, problems);
  } catch (const Failure& failure) {
    problems.add(failure.problem());
  }
  reply.text = problem_text(problems);
  if (problems.has_errors()) {
    take_back(reply, PLATEWRIGHT_HAS_PROBLEMS, std::move(reply.text));
  }
}

}  // namespace

const char* kept(platewright_reply& reply, std::string text) {
  return reply.texts.emplace_back(std::move(text)).c_str();
}

platewright_number kept(platewright_reply& reply, const Rational& number) {
  return {kept(reply, as_fraction(number)), nearest_double(number)};
}

platewright_number kept(platewright_reply& reply, const std::optional<Rational>& number) {
  return number ? kept(reply, *number) : platewright_number{nullptr, 0};
}

platewright_number kept(platewright_reply& reply, const Money& sum) {
  return kept(reply, sum.in(units::currency_unit));
}

platewright_amount kept(platewright_reply& reply, const std::optional<Amount>& amount) {
  if (!amount) return {{nullptr, 0}, nullptr};
  return {kept(reply, amount->number), kept(reply, std::string(amount->unit.name()))};
}

Rational number_typed(std::string_view argument, const char* text) {
  return of_argument(argument, [&] {
    Rational number = read_number(text);
    if (number <= 0) throw Failure(problems::number_not_positive("a number", text));
    return number;
  });
}

const Recipe& recipe_asked(const Book& book, const char* name) {
  if (name != nullptr) {
    return *of_argument("recipe", [&] { return &book.recipes.recipe(name); });
  }
  if (book.main_recipes.empty()) {
    throw Failure(problems::nothing_to_do(book.files.empty() ? "" : book.files.front(), "recipe"));
  }
  return book.recipes.recipe(book.main_recipes.front());
}

platewright_reply* wrong_call(const char* what) noexcept {
  try {
    auto reply = std::make_unique<platewright_reply>();
    reply->status = PLATEWRIGHT_WRONG_CALL;
    reply->text = std::string("platewright: ") + what + " must not be null";
    return reply.release();
  } catch (...) {
    return nullptr;
  }
}

platewright_reply* answered(
    const std::function<void(platewright_reply&, ProblemList&)>& work) noexcept {
  try {
    auto reply = std::make_unique<platewright_reply>();
    try {
      fill(*reply, work);
    } catch (const std::bad_alloc&) {
      throw;
    } catch (const std::exception& fault) {
      take_back(*reply, PLATEWRIGHT_FAULT, std::string("platewright: ") + fault.what());
    }
    return reply.release();
  } catch (...) {
    return nullptr;
  }
}

}  // namespace platewright::c

extern "C" {

const char* platewright_version(void) {
  return PLATEWRIGHT_VERSION;
}

platewright_status platewright_status_of(const platewright_reply* reply) {
  return reply == nullptr ? PLATEWRIGHT_NO_MEMORY : reply->status;
}

const char* platewright_text_of(const platewright_reply* reply) {
  return reply == nullptr ? "platewright: no memory is left" : reply->text.c_str();
}

const platewright_book* platewright_book_of(const platewright_reply* reply) {
  return reply == nullptr || !reply->book ? nullptr : &*reply->book;
}

const platewright_scaled* platewright_scaled_of(const platewright_reply* reply) {
  return reply == nullptr || !reply->scaled ? nullptr : &*reply->scaled;
}

const platewright_cost* platewright_cost_of(const platewright_reply* reply) {
  return reply == nullptr || !reply->cost ? nullptr : &*reply->cost;
}

const platewright_yield* platewright_yield_of(const platewright_reply* reply) {
  return reply == nullptr || !reply->yield ? nullptr : &*reply->yield;
}

const platewright_quote* platewright_quote_of(const platewright_reply* reply) {
  return reply == nullptr || !reply->quote ? nullptr : &*reply->quote;
}

void platewright_free_reply(platewright_reply* reply) {
  delete reply;
}

}  // extern "C"
