// SPDX-License-Identifier: MIT
#include "platewright/costing/plate_table.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

PlatePrices dollars(const std::vector<const char*>& texts) {
  std::vector<Money> prices;
  for (const char* text : texts) prices.push_back(money(text));
  return PlatePrices(prices, Currency("USD"));
}

PlateTable one_plate(const std::vector<PriceShare>& lines) {
  PlateTable table;
  table.add(lines);
  return table;
}

std::int64_t exactly(const PlateTable& table, const PlatePrices& prices) {
  return steps_of(table.exact_cost(0, prices), 1, Rounding::half_up).convert_to<std::int64_t>();
}

}  // namespace

TEST_CASE("a table of plates costs each to the cent") {
  PlateTable table;
  // 6 oz of a 40 lb case at 62.65, trimmed to 3/4: 62.65 x 6 / 640 x 4/3 = 0.783125.
  table.add({{0, fraction(6, 640) / fraction(3, 4)}, {1, fraction(1, 8)}});
  table.add({{1, 2}});
  table.add({});
  const PlatePrices prices = dollars({"62.65", "3.20"});
  const RecostedPlates plates = recost(table, prices);
  CHECK(plates.costs == std::vector<std::int64_t>{118, 640, 0});
  CHECK(plates.in_fractions == 0);
  CHECK(table.exact_cost(0, prices) == printed("118.3125"));
  CHECK(table.size() == 3);
  CHECK(table.lines() == 3);
}

TEST_CASE("a half cent of a table goes up, and what is just below it down") {
  const PlateTable half = one_plate({{0, fraction(1, 2)}});
  CHECK(recost(half, dollars({"0.01"})).costs.front() == 1);
  CHECK(recost(half, dollars({"0.03"})).costs.front() == 2);
  CHECK(recost(half, dollars({"0.029999999"})).costs.front() == 1);
  CHECK(recost(half, dollars({"0.030000001"})).costs.front() == 2);
  CHECK(recost(half, dollars({"0.00"})).costs.front() == 0);
  // A third and a sixth of one cent are half a cent together.
  const PlateTable thirds = one_plate({{0, fraction(1, 3)}, {0, fraction(1, 6)}});
  CHECK(recost(thirds, dollars({"0.01"})).costs.front() == 1);
}

TEST_CASE("a table is costed in the minor unit of the currency") {
  const PlateTable half = one_plate({{0, fraction(1, 2)}});
  CHECK(recost(half, PlatePrices({money("3")}, Currency("JPY"))).costs.front() == 2);
  CHECK(recost(half, PlatePrices({money("0.003")}, Currency("KWD"))).costs.front() == 2);
}

TEST_CASE("one price changes and only its plates with it") {
  PlateTable table;
  table.add({{0, fraction(1, 4)}});
  table.add({{1, fraction(1, 4)}});
  PlatePrices prices = dollars({"1.00", "2.00"});
  CHECK(recost(table, prices).costs == std::vector<std::int64_t>{25, 50});
  prices.change(1, money("3.00"));
  CHECK(recost(table, prices).costs == std::vector<std::int64_t>{25, 75});
  prices.change(1, money("3.0101"));  // in hundredths of a cent from here on
  CHECK(recost(table, prices).costs == std::vector<std::int64_t>{25, 75});
  prices.change(0, money("90000000000"));  // more than 32 bits
  CHECK(recost(table, prices).costs == std::vector<std::int64_t>{2'250'000'000'000, 75});
  prices.change(0, money("1.02"));
  CHECK(recost(table, prices).costs == std::vector<std::int64_t>{26, 75});
  CHECK(prices.marked() == 0);
}

TEST_CASE("shares without a denominator that fits are costed in fractions") {
  // Three primes below 2^31: their product has 93 binary digits.
  const PlateTable table = one_plate({{0, fraction(1, 2147483647)},
                                      {0, fraction(1, 2147483629)},
                                      {0, fraction(1, 2147483587)},
                                      {1, fraction(1, 2)}});
  CHECK(table.wide() == 1);
  const PlatePrices prices = dollars({"21474836.47", "0.01"});
  const RecostedPlates plates = recost(table, prices);
  CHECK(plates.in_fractions == 1);
  // 1 + a little + a little more + 1/2.
  CHECK(table.exact_cost(0, prices) > printed("3.5"));
  CHECK(plates.costs.front() == 4);
}

TEST_CASE("a sum of shares that does not fit is costed in fractions") {
  const std::int64_t large = std::int64_t{1} << 61U;
  const PlateTable fits = one_plate({{0, large}, {0, large}});
  const PlateTable too_large = one_plate({{0, large}, {0, large}, {0, 1}});
  CHECK(fits.wide() == 0);
  CHECK(too_large.wide() == 1);
  const PlatePrices nothing = dollars({"0"});
  CHECK(recost(fits, nothing).costs.front() == 0);
  CHECK(recost(too_large, nothing).costs.front() == 0);
  CHECK(recost(too_large, nothing).in_fractions == 1);
}

TEST_CASE("the largest prices and shares that fit are added without a loss") {
  const std::int64_t large = std::int64_t{1} << 61U;
  // 2^62 hundredths of a cent, twice the share 2^61 / (2^62 - 1) of it.
  const Rational price = Rational(Integer(1) << 62U) / 10'000;
  const PlatePrices prices({money(price)}, Currency("USD"));
  const Rational share(Integer(large), (Integer(1) << 62U) - 1);
  const PlateTable table = one_plate({{0, share}, {0, share}});
  CHECK(table.wide() == 0);
  CHECK(recost(table, prices).in_fractions == 0);
  CHECK(recost(table, prices).costs.front() == exactly(table, prices));
}

TEST_CASE("a price that is no whole part of a cent costs its own plates in fractions") {
  PlateTable table;
  table.add({{0, fraction(1, 2)}});
  table.add({{1, fraction(1, 2)}});
  const PlatePrices prices({money("0.03"), money(fraction(1, 3000000007))}, Currency("USD"));
  CHECK(prices.marked() == 1);
  const RecostedPlates plates = recost(table, prices);
  CHECK(plates.costs == std::vector<std::int64_t>{2, 0});
  CHECK(plates.in_fractions == 1);
}

TEST_CASE("what a table can't be asked is refused") {
  CHECK(problem_of([] { dollars({"1.00"}).change(0, money(-1)); }).id == "number-not-positive");
  CHECK(problem_of([] { PlatePrices({money(-1)}, Currency("USD")); }).id == "number-not-positive");
  CHECK(problem_of([] { one_plate({{0, fraction(-1, 2)}}); }).id == "number-not-positive");
  const PlateTable table = one_plate({{0, 1}, {0, 1}});
  CHECK(problem_of([&] { recost(table, dollars({"5000000000000000"})); }).id == "number-too-long");
  CHECK(recost(table, dollars({"4999999999999999.99"})).costs.front() == 999'999'999'999'999'998);
  const PlateTable large = one_plate({{0, std::int64_t{1} << 62U}});
  CHECK(problem_of([&] { recost(large, dollars({"1.00"})); }).id == "number-too-long");
  CHECK_THROWS_AS(recost(one_plate({{1, 1}}), dollars({"1.00"})), std::out_of_range);
  std::vector<std::int64_t> two(2);
  CHECK_THROWS_AS(table.recost(dollars({"1.00"}), 0, two), std::out_of_range);
  CHECK_THROWS_AS(table.recost(dollars({"1.00"}), 2, {}), std::out_of_range);
}

TEST_CASE("a table is costed in parts as it is whole") {
  PlateTable table;
  for (std::int64_t i = 0; i < 100; ++i) table.add({{0, fraction(i, 7)}, {1, fraction(i, 64)}});
  const PlatePrices prices = dollars({"1.07", "0.32"});
  const RecostedPlates whole = recost(table, prices);
  std::vector<std::int64_t> parts(table.size());
  table.recost(prices, 0, std::span(parts).first(33));
  table.recost(prices, 33, std::span(parts).subspan(33));
  CHECK(parts == whole.costs);
}
