// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/numbers.hpp.

#include <cstddef>
#include <utility>

#include "platewright/problem/catalogue/numbers.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem number_missing(std::string_view text) {
  // `about 2 tsp`, `$9.50`
  const std::size_t digit = text.find_first_of("0123456789");
  std::string remedy = "write the number in digits, before the unit";
  if (digit != std::string_view::npos && digit > 0) {
    std::string_view before = text.substr(0, digit);
    while (!before.empty() && before.back() == ' ') before.remove_suffix(1);
    remedy = "begin with the number, without " + in_quotes(before, 20) + " before it";
  }
  return make_problem("number-missing", in_quotes(text), "a number such as 3, 0.75, 1/3 or 1 1/2",
                      std::move(remedy));
}

PLATEWRIGHT_BODY Problem number_malformed(std::string_view text, std::string why) {
  return make_problem("number-malformed", in_quotes(text) + " (" + std::move(why) + ")",
                      "a number such as 3, 0.75, 1/3 or 1 1/2",
                      "write the number in one of these forms");
}

PLATEWRIGHT_BODY Problem number_has_comma(std::string_view text) {
  return make_problem("number-comma", in_quotes(text),
                      "a decimal point, and no grouping of thousands",
                      "write 1.5 for one and a half, and 1500 for fifteen hundred");
}

PLATEWRIGHT_BODY Problem number_signed(std::string_view text) {
  return make_problem("number-signed", in_quotes(text), "a number without a sign",
                      "amounts, yields and prices are never negative here; take the sign out");
}

PLATEWRIGHT_BODY Problem number_exponent(std::string_view text) {
  return make_problem("number-exponent", in_quotes(text), "a number in plain digits",
                      "write all digits, as in 1000 for 1e3");
}

PLATEWRIGHT_BODY Problem number_zero_denominator(std::string_view text) {
  return make_problem("number-zero-denominator", in_quotes(text),
                      "a fraction with a denominator above 0", "correct the fraction");
}

PLATEWRIGHT_BODY Problem number_too_long(std::string_view text) {
  return make_problem("number-too-long", in_quotes(text), "at most 18 digits",
                      "round the figure to what a scale or an invoice can show");
}

PLATEWRIGHT_BODY Problem number_too_fine() {
  return make_problem(
      "number-too-fine",
      "a sum of so many figures, each to so many digits, that the exact fraction has "
      "more than nineteen thousand digits",
      "figures as a scale or an invoice shows them",
      "round the amounts and prices to what was weighed and paid");
}

PLATEWRIGHT_BODY Problem number_not_finite() {
  return make_problem("number-not-finite",
                      "a floating-point number that is infinite or not a number", "a finite number",
                      "look for a division by 0 before it");
}

PLATEWRIGHT_BODY Problem number_not_positive(std::string_view what, std::string_view found) {
  return make_problem("number-not-positive", std::string(what) + " of " + std::string(found),
                      std::string(what) + " above 0", "correct the figure, or leave the line out");
}

PLATEWRIGHT_BODY Problem share_out_of_range(std::string_view what, std::string_view found,
                                            std::string_view range) {
  return make_problem("share-out-of-range", std::string(what) + " of " + std::string(found),
                      std::string(range), "correct the share; write 12 % or 0.12 or 3/25");
}

}  // namespace platewright::problems
