// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/contradictions.hpp.

#include <string>

#include "platewright/problem/catalogue/contradictions.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem tested_on_differs(std::string_view line, std::string_view written,
                                           std::string_view tested) {
  return make_problem(
      "tested-on-differs",
      std::string(written) + " of " + in_quotes(line) + ", and tested on " + std::string(tested),
      "one weight: the pieces that were tested are this line", "correct the amount or `tested on`");
}

PLATEWRIGHT_BODY Problem brine_above_saturation(std::string_view salt, std::string_view share) {
  return make_problem("brine-above-saturation",
                      in_quotes(salt) + " at " + std::string(share) + " of the water",
                      "36 % at most, as water holds no more salt in it",
                      "correct the share: brines for meat are mostly of 3 % to 12 %");
}

PLATEWRIGHT_BODY Problem step_beyond_date_mark(std::string_view days, std::string_view most,
                                               std::string_view source) {
  return make_problem(
      "step-beyond-date-mark", "a step that takes up to " + std::string(days),
      std::string(most) + " at most for food that is kept cold (" + std::string(source) + ")",
      "correct the time or its unit; what is cured or fermented needs a plan that "
      "your inspector accepts. Local codes come first");
}

PLATEWRIGHT_BODY Problem yield_of_another_method(std::string_view cut, std::string_view row,
                                                 std::string_view method) {
  return make_problem("yield-of-another-method",
                      in_quotes(cut) + " goes by a yield of meat that was " + std::string(method) +
                          " (" + in_quotes(row, 100) + "), and the recipe is cooked in the oven",
                      "a row that was cooked alike",
                      "name one under `cut`, as `platewright tables cuts` lists them");
}

PLATEWRIGHT_BODY Problem piece_price_bare(std::string_view price, std::string_view piece) {
  return make_problem("piece-price-bare",
                      in_quotes(price) + " for a piece of " + std::string(piece) +
                          ", and not whether it is the price of a weight or of the piece",
                      "a price such as 5.40 per lb, or 48.60 per piece",
                      "write `price: " + std::string(price) + " per lb` or `price: " +
                          std::string(price) + " per piece`, whichever it is");
}

}  // namespace platewright::problems
