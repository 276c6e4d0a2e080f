// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/heat.hpp.

#include <string>

#include "platewright/problem/catalogue/heat.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem roast_shape_impossible(std::string_view measured,
                                                std::string_view weight) {
  return make_problem(
      "roast-shape", std::string(measured) + " for a piece of " + std::string(weight),
      "a girth or thickness above 0 and no larger than that of a ball of this weight",
      "measure again, across the piece and not along it; take a piece as round as a "
      "ball by its weight alone");
}

PLATEWRIGHT_BODY Problem roast_oven_open(std::string_view why) {
  return make_problem("roast-oven-steps", std::string(why),
                      "oven steps with a time each, and a last one without, which lasts until the "
                      "roast is taken out",
                      "give every step but the last its time");
}

PLATEWRIGHT_BODY Problem roast_never_done(std::string_view pull, std::string_view most) {
  return make_problem("roast-never-done",
                      std::string(pull) + " inside not reached in " + std::string(most),
                      "an oven that reaches it in that time",
                      "raise the oven's temperature, or take several smaller pieces");
}

PLATEWRIGHT_BODY Problem roast_starts_done(std::string_view start, std::string_view pull) {
  return make_problem(
      "roast-starts-done",
      "a roast at " + std::string(start) + " that is taken out at " + std::string(pull),
      "a temperature at the start below that at which it is taken out", "correct one of the two");
}

PLATEWRIGHT_BODY Problem composition_not_meat(std::string_view what) {
  return make_problem("roast-composition", std::string(what),
                      "water, protein and fat as shares of the weight that come to 100 % or less, "
                      "with half of it or more water",
                      "take the shares from a table of food composition");
}

PLATEWRIGHT_BODY Problem timed_roast_unlikely(std::string_view took, std::string_view expected) {
  return make_problem(
      "timed-roast",
      "a timed roast of " + std::string(took) + " where " + std::string(expected) + " is likely",
      "a time between a quarter and four times of what is likely",
      "look for a slip in its weight, its oven or its time; what was timed must be "
      "this very roast, from the oven's door closed to the temperature inside");
}

PLATEWRIGHT_BODY Problem timed_roast_malformed(std::string_view text) {
  return make_problem("timed-roast-malformed", "the timed roast " + in_quotes(text),
                      "a weight and a time, as in \"5 lb in 150 min\"", "write it in this form");
}

PLATEWRIGHT_BODY Problem fat_not_stated(std::string_view food) {
  return make_problem("fat-not-stated", std::string(food) + " without its share of fat",
                      "the share of fat, by which its table goes",
                      "add it, as in --fat \"12 %\", the most that the table has, where it is not "
                      "known");
}

PLATEWRIGHT_BODY Problem fat_not_asked(std::string_view food) {
  return make_problem("fat-not-asked", "a share of fat of " + std::string(food),
                      "none, as its table does not go by fat", "leave it out");
}

PLATEWRIGHT_BODY Problem core_log_short(std::size_t readings) {
  return make_problem("core-log-short", std::to_string(readings) + " readings",
                      "two readings of the core or more", "log the core from start to end");
}

PLATEWRIGHT_BODY Problem core_log_order(std::string_view before, std::string_view after) {
  return make_problem("core-log-order",
                      "a reading at " + std::string(after) + " after one at " + std::string(before),
                      "readings in the order of their times, each time once",
                      "put the readings into order; look for a clock that was set anew");
}

PLATEWRIGHT_BODY Problem core_log_gap(std::string_view before, std::string_view after,
                                      std::string_view most) {
  return make_problem("core-log-gap",
                      "no reading between " + std::string(before) + " and " + std::string(after),
                      "a reading every " + std::string(most) + " or more often",
                      "what nobody measured counts for nothing: take the log as two, and count "
                      "only the part without the gap");
}

PLATEWRIGHT_BODY Problem core_log_header(std::string_view found) {
  return make_problem("core-log-header", "the columns " + in_quotes(found),
                      "two columns: seconds, minutes or hours, and F or C",
                      "write the units of the log as its first line, as in `minutes,F`");
}

PLATEWRIGHT_BODY Problem fat_beyond_table(std::string_view found, std::string_view most) {
  return make_problem("fat-beyond-table", "meat with " + std::string(found) + " fat",
                      "at most " + std::string(most) + " fat, where the table ends",
                      "cook it to the minimum temperature of its kind");
}

}  // namespace platewright::problems
