// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/costs.hpp.

#include <string>

#include "platewright/problem/catalogue/costs.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem price_missing(std::string_view ingredient) {
  return make_problem(
      "price-missing", "no price of " + in_quotes(ingredient),
      "a purchase of every ingredient that is used",
      "write how it is bought, as in `buy: [{pack: 40 lb, price: 62.00}]`, or `free: yes`");
}

PLATEWRIGHT_BODY Problem price_later(std::string_view ingredient, std::string_view first_day) {
  return make_problem("price-later",
                      "no price of " + in_quotes(ingredient) + " on the day that is reckoned for",
                      "a day from " + std::string(first_day) + " on, when its first price begins",
                      "ask for a later day (--prices-on, or the event's), or write what it cost "
                      "before");
}

PLATEWRIGHT_BODY Problem quote_nobody_pays() {
  return make_problem("quote-nobody-pays", "no guest who pays",
                      "guests of one kind or more with a price share above 0",
                      "correct the guests or their price shares");
}

PLATEWRIGHT_BODY Problem charge_taxed_after_tax() {
  return make_problem("charge-taxed-after-tax",
                      "a service charge on the price with its tax that is taxed itself",
                      "one of `taxed` and `after tax`",
                      "ask which of the two the tax office wants, and leave the other out");
}

PLATEWRIGHT_BODY Problem charge_after_tax_included() {
  return make_problem(
      "charge-after-tax-included", "a service charge after tax on prices that include their tax",
      "a charge on prices without tax, or one that is not after it",
      "leave out `after tax`: the charge is then on the prices as they are written");
}

PLATEWRIGHT_BODY Problem agreed_below_minimum(std::string_view agreed, std::string_view minimum,
                                              std::string_view lacks) {
  return make_problem("agreed-below-minimum",
                      "an agreed price of " + std::string(agreed) +
                          " and a minimum for a guest of " + std::string(minimum) + ", which is " +
                          std::string(lacks) + " more",
                      "an agreed price of " + std::string(minimum) + " or more",
                      "ask which of the two holds, and correct the other");
}

}  // namespace platewright::problems
