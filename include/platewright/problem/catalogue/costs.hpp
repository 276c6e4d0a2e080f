#pragma once
// What can be wrong with prices and quotes.

#include <string>
#include <string_view>

#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

inline Problem price_missing(std::string_view ingredient) {
  return make_problem(
      "price-missing", "no price of " + in_quotes(ingredient),
      "a purchase of every ingredient that is used",
      "write how it is bought, as in `buy: [{pack: 40 lb, price: 62.00}]`, or `free: yes`");
}

inline Problem quote_nobody_pays() {
  return make_problem("quote-nobody-pays", "no guest who pays",
                      "guests of one kind or more with a price share above 0",
                      "correct the guests or their price shares");
}

}  // namespace platewright::problems
