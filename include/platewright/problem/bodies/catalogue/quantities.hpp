// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/quantities.hpp.

#include <utility>

#include "platewright/problem/catalogue/quantities.hpp"

namespace platewright::problems {

namespace detail {

/// What to write for words that kitchens and suppliers say, which no spelling is near; empty for
/// others.
PLATEWRIGHT_BODY std::string advice_for_spoken(std::string_view unit) {
  for (const std::string_view word : {"pinch", "pinches", "smidgen", "knob", "knobs", "handful",
                                      "handfuls", "splash", "drizzle", "glug", "drop", "drops"}) {
    if (unit == word) return "weigh it or measure it, as in 1/8 tsp, or write `to taste`";
  }
  for (const std::string_view word : {"ct", "cnt", "count"}) {
    if (unit == word) return "write the number alone for a count; a pack may say `24 ct`";
  }
  for (const std::string_view word : {"serving", "servings", "portion", "portions"}) {
    if (unit == word) return "write a weight, a capacity or a count here";
  }
  return {};
}

}  // namespace detail

PLATEWRIGHT_BODY Problem unit_unknown(std::string_view unit,
                                      const std::vector<std::string>& known) {
  std::string remedy = detail::advice_for_spoken(unit);
  if (remedy.empty()) remedy = did_you_mean(unit, known);
  if (remedy.empty())
    remedy = "see `platewright tables units`, or add the unit to tables of your own";
  return make_problem("unit-unknown", "the unit " + in_quotes(unit), "a unit of the table",
                      std::move(remedy));
}

PLATEWRIGHT_BODY Problem unit_ambiguous(std::string_view unit, std::string choices) {
  return make_problem("unit-ambiguous", "the unit " + in_quotes(unit), "a unit with one meaning",
                      "write " + std::move(choices));
}

PLATEWRIGHT_BODY Problem units_do_not_mix(std::string_view left, std::string_view left_dimension,
                                          std::string_view right,
                                          std::string_view right_dimension) {
  return make_problem("units-do-not-mix",
                      std::string(left) + " is " + std::string(left_dimension) + " and " +
                          std::string(right) + " is " + std::string(right_dimension),
                      "amounts of one dimension",
                      "an ounce (oz) is weight, a fluid ounce (fl oz) is "
                      "capacity; write both amounts in one of them");
}

PLATEWRIGHT_BODY Problem wrong_dimension(std::string_view amount, std::string_view found,
                                         std::string_view wanted) {
  return make_problem("wrong-dimension", std::string(amount) + ", which is " + std::string(found),
                      std::string(wanted), "write an amount of " + std::string(wanted));
}

PLATEWRIGHT_BODY Problem density_missing(std::string_view ingredient, std::string_view from,
                                         std::string_view to) {
  return make_problem("density-missing",
                      "no weight of a measure of " + in_quotes(ingredient) + " to get from " +
                          std::string(from) + " to " + std::string(to),
                      "the weight of one cup, spoon or litre of it",
                      "weigh one and write it into the larder, as in `weighs: {1 cup: 125 g}`; "
                      "there is no default");
}

PLATEWRIGHT_BODY Problem piece_weight_missing(std::string_view ingredient, std::string_view kind,
                                              std::string_view known) {
  return make_problem("piece-weight-missing",
                      "no weight of one " + std::string(kind) + " of " + in_quotes(ingredient) +
                          (known.empty() ? "" : " (known: " + std::string(known) + ")"),
                      "the weight of one " + std::string(kind),
                      "weigh one and write it into the larder, as in `weighs: {1 " +
                          std::string(kind) + ": 110 g}`; there is no default");
}

PLATEWRIGHT_BODY Problem amount_malformed(std::string_view text, std::string why) {
  return make_problem("amount-malformed", in_quotes(text) + " (" + std::move(why) + ")",
                      "an amount such as 2 1/4 cups, 2 lb 3 oz, 2-3 tbsp or to taste",
                      "write number and unit; put what is done with it after a comma");
}

PLATEWRIGHT_BODY Problem temperature_malformed(std::string_view text) {
  return make_problem("temperature-malformed", in_quotes(text),
                      "a temperature with its scale, such as 325 F or 163 C",
                      "write the number and F or C");
}

PLATEWRIGHT_BODY Problem system_unknown(std::string_view text) {
  return make_problem("measures-unknown", in_quotes(text),
                      "us, imperial, metric, australian or japanese",
                      "say which cup and pint the book means");
}

}  // namespace platewright::problems
