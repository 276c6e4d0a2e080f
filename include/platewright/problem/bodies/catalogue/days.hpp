// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/days.hpp.

#include <utility>

#include "platewright/problem/catalogue/days.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem pan_space_malformed(std::string_view text) {
  return make_problem(
      "pan-space", in_quotes(text),
      "how many pans of which size, 1000 at most: `10 of full sheet pan`",
      "write the number, `of`, and a pan of `platewright tables vessels` or one with "
      "its size, as in `6 of tray of 60 x 40 cm`");
}

PLATEWRIGHT_BODY Problem hours_malformed(std::string_view text) {
  return make_problem("working-hours", in_quotes(text),
                      "two times of the day, from 00:00 to 24:00: `08:00 to 22:00`",
                      "write both with four digits; an end that is no later than the beginning is "
                      "of the next day");
}

PLATEWRIGHT_BODY Problem oven_range_backwards(std::string_view from, std::string_view to) {
  return make_problem("oven-range", "an oven from " + std::string(from) + " to " + std::string(to),
                      "its lowest temperature under `from`, its highest under `to`",
                      "turn them round, or leave out what you don't know");
}

PLATEWRIGHT_BODY Problem count_too_large(std::string_view what, std::string_view found) {
  return make_problem("count-too-large", std::string(what) + " " + in_quotes(found),
                      "a whole number from 1 to 1000", "write how many there are in this kitchen");
}

PLATEWRIGHT_BODY Problem kitchen_not_said() {
  return make_problem("kitchen-not-said", "no kitchen that says what it has",
                      "a `kitchen:` with its ovens, hobs or people, in a file of the book",
                      "write, for example, `kitchen: {ovens: [{oven: upper deck, racks: 5 of full "
                      "sheet pan}], people: [{role: cook, workers: 2, hours: 08:00 to 22:00}]}`");
}

PLATEWRIGHT_BODY Problem ovens_short(std::string_view recipes, std::string_view from,
                                     std::string_view until, bool looked_at_all,
                                     std::string remedy) {
  return make_problem("ovens-short",
                      "the ovens do not do for " + std::string(recipes) + " between " +
                          std::string(from) + " and " + std::string(until) +
                          (looked_at_all ? "" : ", as far as ways of loading were looked at"),
                      "racks at its temperature for every pan, in time to be served",
                      std::move(remedy));
}

PLATEWRIGHT_BODY Problem hands_short(std::string_view step, std::string_view recipe,
                                     std::string_view from, std::string_view until,
                                     std::string_view wanted, std::string_view free,
                                     std::string remedy) {
  return make_problem("hands-short",
                      std::string(free) + " free for " + std::string(step) + " of " +
                          in_quotes(recipe) + " from " + std::string(from) + " to " +
                          std::string(until),
                      std::string(wanted) + ", there and free of other work", std::move(remedy));
}

PLATEWRIGHT_BODY Problem space_short(std::string_view space, std::string_view recipes,
                                     std::string_view from, std::string_view until,
                                     std::string_view wanted, std::string_view there) {
  return make_problem("space-short",
                      std::string(wanted) + " places taken " + std::string(space) + " between " +
                          std::string(from) + " and " + std::string(until) + ", by " +
                          std::string(recipes),
                      std::string(there) + " at most, which the kitchen has",
                      "do one of them at another time, or find more room for that time");
}

PLATEWRIGHT_BODY Problem day_not_said(std::string_view recipe, std::string_view what,
                                      std::string_view meanwhile, std::string remedy) {
  return make_problem("day-not-said", in_quotes(recipe) + " " + std::string(what),
                      "what the plan of the day needs: without it " + std::string(meanwhile),
                      std::move(remedy));
}

}  // namespace platewright::problems
