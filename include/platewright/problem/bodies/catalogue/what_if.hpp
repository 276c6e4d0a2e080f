// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/what_if.hpp.

#include "platewright/problem/catalogue/what_if.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem change_malformed(std::string_view text, std::string_view example) {
  return make_problem("change-malformed", in_quotes(text),
                      "a name, = and what it becomes, as in " + in_quotes(example),
                      "write both sides of the =, all between quotation marks");
}

PLATEWRIGHT_BODY Problem change_of_a_piece(std::string_view ingredient, std::string_view unit) {
  return make_problem("change-of-a-piece",
                      "a price of " + in_quotes(ingredient) +
                          ", which goes by the piece and is "
                          "priced by its weight",
                      "what the price is for", "write, for example, 9.40 per " + std::string(unit));
}

PLATEWRIGHT_BODY Problem swap_of_nothing(std::string_view name) {
  return make_problem("swap-of-nothing", "no line that uses " + in_quotes(name),
                      "an ingredient or a recipe that is used",
                      "name what stands in a recipe or on the menu");
}

PLATEWRIGHT_BODY Problem budget_without_cut(std::string_view dish) {
  return make_problem("budget-without-cut", in_quotes(dish) + " uses no cut of meat",
                      "a dish of the menu whose main line is a cut", "name another dish");
}

PLATEWRIGHT_BODY Problem draws_out_of_range(std::string_view found) {
  return make_problem("draws-out-of-range", std::string(found) + " draws", "100 to 1000000 draws",
                      "10000 draws know a chance to about 1 %");
}

PLATEWRIGHT_BODY Problem too_many_draws(const std::string& draws, const std::string& costs) {
  return make_problem("too-many-draws", draws + " draws of " + costs + " prices and yields",
                      "at most 50000000 numbers drawn in all",
                      "ask for fewer `--draws`; 10000 know a chance to about 1 %");
}

PLATEWRIGHT_BODY Problem too_many_trials(const std::string& question, const std::string& trials,
                                         const std::string& most, const std::string& lines) {
  return make_problem(
      "too-many-trials",
      question + " of an event of " + lines + " lines, which takes " + trials + " plans",
      "a question that takes at most " + most + " plans of so many lines",
      "ask it of a smaller event or of part of the menu; the plain quote, order and "
      "cost are not bounded so");
}

PLATEWRIGHT_BODY Problem guests_of_several_events(std::string_view events) {
  return make_problem("guests-of-several-events",
                      "a number of guests for " + std::string(events) + " events",
                      "--guests with one event", "name one event's file, or leave --guests out");
}

}  // namespace platewright::problems
