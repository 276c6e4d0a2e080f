// SPDX-License-Identifier: MIT
// What holds for any table of plates.

#include "platewright/costing/plate_table.hpp"

#include <rapidcheck.h>

#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;

namespace {

/// Of any size that a share has or might have: whole, of small parts, of parts that no denominator
/// fits.
Rational any_share() {
  const std::int64_t most =
      *rc::gen::element<std::int64_t>(1, 16, 1000, 2'000'000'000, 4'000'000'000'000'000'000);
  return fraction(*rc::gen::inRange<std::int64_t>(0, most + 1),
                  *rc::gen::inRange<std::int64_t>(1, most + 1));
}

Money any_price() {
  const std::int64_t most = *rc::gen::element<std::int64_t>(10, 10'000, 50'000'000'000);
  const std::int64_t parts = *rc::gen::element<std::int64_t>(1, 100, 100, 100, 10'000, 7, 999'983);
  return test::money(fraction(*rc::gen::inRange<std::int64_t>(0, most), parts));
}

std::vector<PriceShare> any_plate(std::size_t prices) {
  std::vector<PriceShare> out;
  const int lines = *rc::gen::inRange(0, 14);
  for (int i = 0; i < lines; ++i) {
    out.push_back(
        {*rc::gen::inRange<std::uint32_t>(0, static_cast<std::uint32_t>(prices)), any_share()});
  }
  return out;
}

/// From the shares as they were drawn: nothing of the table's.
Rational cost_in_cents(const std::vector<PriceShare>& plate, const std::vector<Money>& prices) {
  Money sum;
  for (const PriceShare& line : plate) sum += prices[line.price] * line.share;
  return round_money(sum, test::money("0.01"), Rounding::half_up) / test::money("0.01");
}

}  // namespace

TEST_CASE("a table costs every plate as fractions do, also after one price changes") {
  CHECK(rc::check([] {
    std::vector<Money> prices;
    for (int i = 0; i < 5; ++i) prices.push_back(any_price());
    std::vector<std::vector<PriceShare>> plates;
    PlateTable table;
    for (int i = 0; i < 8; ++i) {
      plates.push_back(any_plate(prices.size()));
      table.add(plates.back());
    }
    PlatePrices kept(prices, Currency("USD"));
    for (std::size_t change = 0; change < 3; ++change) {
      try {
        const RecostedPlates costed = recost(table, kept);
        for (std::size_t i = 0; i < plates.size(); ++i) {
          RC_ASSERT(Rational(costed.costs[i]) == cost_in_cents(plates[i], prices));
        }
        RC_ASSERT(costed.in_fractions >= table.wide());
        RC_CLASSIFY(costed.in_fractions > 0, "some in fractions");
      } catch (const Failure&) {
        const bool too_large = std::any_of(plates.begin(), plates.end(), [&](const auto& plate) {
          return cost_in_cents(plate, prices) >= 1'000'000'000'000'000'000;
        });
        RC_ASSERT(too_large);
        RC_TAG("refused");
      }
      prices[change] = any_price();
      kept.change(change, prices[change]);
    }
  }));
}
