// SPDX-License-Identifier: MIT
// Money that says its currency.

#include "platewright/quantity/money.hpp"

#include "platewright/costing/price_list.hpp"
#include "platewright/costing/purchase_builders.hpp"
#include "platewright/quantity/literals.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::literals;
using namespace platewright::test;

TEST_CASE("a sum names its currency and is plain money beside it") {
  const SumIn sum = 62.65_usd;
  CHECK(sum.currency == Currency("USD"));
  CHECK(sum == money("62.65"));
  CHECK(18.5_eur * 2 == money("37"));
  CHECK(for_a_pound(9_gbp / 1_lb) == 9);
  CHECK(sum_in("1200", "JPY").currency.minor_digits() == 0);
}

TEST_CASE("there is no currency of another code") {
  CHECK(problem_of([] { Currency("usd"); }).id == "currency-malformed");
  CHECK(problem_of([] { sum_in("5", "XTS"); }).id == "currency-malformed");
  CHECK(Currency("EUR").minor_digits() == 2);
  CHECK(Currency("KWD").minor_digits() == 3);
}

TEST_CASE("a price list refuses an offer that was said in another currency") {
  PriceList prices;
  prices.add("flour", builders::pack(25_lb, 20_usd));
  prices.add("salt", builders::pack(1_kg, money("2")));  // no currency was said: the list's own
  CHECK(problem_of([&] { prices.add("oil", builders::pack(1_gal, 32_eur)); }).id ==
        "exchange-rate-missing");
  CHECK(prices.find("oil") == nullptr);
}
