// SPDX-License-Identifier: MIT
#pragma once
// What every function of the C interface gives: a status, a text, and what was asked for.

#include <deque>
#include <exception>
#include <functional>
#include <memory>
#include <new>
#include <optional>
#include <string>
#include <vector>

#include "platewright/book/book.hpp"
#include "platewright/c/platewright.h"
#include "platewright/number/rational.hpp"
#include "platewright/problem/problem_list.hpp"

struct platewright_book {
  platewright::Book value;
};

struct platewright_reply {
  platewright_status status = PLATEWRIGHT_DONE;
  std::string text;
  std::optional<platewright_book> book;
  std::optional<platewright_scaled> scaled;
  std::optional<platewright_cost> cost;
  std::optional<platewright_yield> yield;
  std::optional<platewright_quote> quote;

  // What the values point to. A deque leaves its texts where they are.
  std::deque<std::string> texts;
  std::vector<platewright_scaled_line> scaled_lines;
  std::vector<platewright_cost_line> cost_lines;
  std::vector<platewright_yield_step> yield_steps;
};

namespace platewright::c {

/// Keeps the text with the reply.
const char* kept(platewright_reply& reply, std::string text);
platewright_number kept(platewright_reply& reply, const Rational& number);
platewright_number kept(platewright_reply& reply, const std::optional<Rational>& number);
platewright_number kept(platewright_reply& reply, const Money& sum);
platewright_amount kept(platewright_reply& reply, const std::optional<Amount>& amount);

/// Runs `read`; what it refuses is a problem of the argument named. Throws Failure.
template <class Read>
auto of_argument(std::string_view argument, Read&& read) {
  try {
    return std::forward<Read>(read)();
  } catch (const Failure& failure) {
    Problem problem = failure.problem();
    problem.place.path = argument;
    throw Failure(std::move(problem));
  }
}

/// A number above 0, typed. Throws Failure, which names the argument.
Rational number_typed(std::string_view argument, const char* text);

/// The recipe named, or the first of the book's own. Throws Failure.
const Recipe& recipe_asked(const Book& book, const char* name);

/// A reply for a call that lacks `what`. Null where there is no memory for it.
platewright_reply* wrong_call(const char* what) noexcept;

/// Runs `work`, which fills the reply and adds what there is to be warned of. Nothing is thrown: a
/// problem, or any other exception, is in the reply, which then holds no answer. Null where there
/// is no memory for one.
platewright_reply* answered(
    const std::function<void(platewright_reply&, ProblemList&)>& work) noexcept;

}  // namespace platewright::c
