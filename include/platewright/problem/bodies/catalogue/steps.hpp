// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/steps.hpp.

#include <utility>

#include "platewright/problem/catalogue/steps.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem step_key_without_kind(std::string_view key) {
  return make_problem("step-key-without-kind", in_quotes(key) + " in a step without a kind",
                      "the kind of step beside it, whose rule it is held against",
                      "write, for example, `kind: chill`");
}

PLATEWRIGHT_BODY Problem step_key_not_taken(std::string_view kind, std::string_view key) {
  return make_problem(
      "step-key-not-taken", in_quotes(key) + " in a step of kind " + in_quotes(kind),
      "no " + in_quotes(key) + ": there is no rule for it", "take it out, or correct the kind");
}

PLATEWRIGHT_BODY Problem reached_malformed(std::string_view text) {
  return make_problem("reached-malformed", in_quotes(text),
                      "one temperature or several, each with its time from the beginning of the "
                      "step, later ones behind: colder ones of a chill, hotter ones of a reheating",
                      "write, for example, `reaches: 70 F in 2 h, 41 F in 6 h`");
}

PLATEWRIGHT_BODY Problem step_growth_malformed(std::string_view text,
                                               const std::vector<std::string>& words) {
  std::string counted;
  for (const std::string& word : words)
    counted += (counted.empty() ? "`per " : ", `per ") + word + "`";
  return make_problem("step-growth", in_quotes("per " + std::string(text)),
                      "what the time is for: " + counted +
                          ", or of several at once, as in `per 4 batches`; behind it, if they "
                          "share the work, `by 2 people`",
                      "write one of these, or the time alone if it stays as tested");
}

namespace detail {

PLATEWRIGHT_BODY std::string codes_first(std::string remedy) {
  return std::move(remedy) + "; local codes come first";
}

}  // namespace detail

PLATEWRIGHT_BODY Problem step_place_unsafe(std::string found, std::string wanted,
                                           std::string remedy) {
  return make_problem("step-place", std::move(found), std::move(wanted),
                      detail::codes_first(std::move(remedy)));
}

PLATEWRIGHT_BODY Problem step_temperature_unsafe(std::string found, std::string wanted,
                                                 std::string remedy) {
  return make_problem("step-temperature", std::move(found), std::move(wanted),
                      detail::codes_first(std::move(remedy)));
}

PLATEWRIGHT_BODY Problem step_takes_too_long(std::string found, std::string wanted,
                                             std::string remedy) {
  return make_problem("step-takes-too-long", std::move(found), std::move(wanted),
                      detail::codes_first(std::move(remedy)));
}

PLATEWRIGHT_BODY Problem step_too_short(std::string found, std::string wanted, std::string remedy) {
  return make_problem("step-too-short", std::move(found), std::move(wanted),
                      detail::codes_first(std::move(remedy)));
}

PLATEWRIGHT_BODY Problem marinade_not_boiled(std::string found, std::string wanted,
                                             std::string remedy) {
  return make_problem("marinade-not-boiled", std::move(found), std::move(wanted),
                      detail::codes_first(std::move(remedy)));
}

PLATEWRIGHT_BODY Problem kept_too_long(std::string_view recipe, std::string_view made,
                                       std::string_view used, std::string_view use_by,
                                       std::string_view source) {
  return make_problem("kept-too-long",
                      in_quotes(recipe) + " is made on " + std::string(made) +
                          " at the soonest and used on " + std::string(used),
                      "used by " + std::string(use_by) + ", the day it is made being the first (" +
                          std::string(source) + ")",
                      "make it later; local codes come first");
}

PLATEWRIGHT_BODY Problem keeping_not_said(std::string_view recipe, std::string_view longest,
                                          std::string_view most, std::string_view source) {
  return make_problem("keeping-not-said",
                      in_quotes(recipe) + " is cooked and waits up to " + std::string(longest) +
                          " for the last that uses it; no step says how it is kept",
                      std::string(most) + " at most, or steps that cool it and keep it (" +
                          std::string(source) + ")",
                      "write steps of `kind: chill` and `kind: hold cold`, or `kind: hold hot`; "
                      "local codes come first");
}

}  // namespace platewright::problems
