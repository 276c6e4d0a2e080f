// SPDX-License-Identifier: MIT
// Goods and suppliers made up at random: the search against every assignment there is.

#include "platewright/event/assignment.hpp"

#include <rapidcheck.h>

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

struct Market {
  std::vector<std::vector<BuyingWay>> goods;
  std::vector<SupplierCharges> suppliers;
};

Money random_money(int most) {
  return money(fraction(*rc::gen::inRange<std::int64_t>(0, most * 4), 4));
}

Market random_market() {
  Market out;
  const int suppliers = *rc::gen::inRange(1, 5);
  for (int i = 0; i < suppliers; ++i) out.suppliers.push_back({random_money(60), random_money(15)});
  const int goods = *rc::gen::inRange(1, 7);
  for (int i = 0; i < goods; ++i) {
    std::vector<BuyingWay> ways;
    const int count = *rc::gen::inRange(1, 4);
    for (int j = 0; j < count; ++j) {
      BuyingWay way;
      way.supplier = *rc::gen::inRange<std::size_t>(0, out.suppliers.size());
      way.cost = random_money(40);
      if (*rc::gen::inRange(0, 3) > 0) {
        way.day = LocalTime(std::chrono::local_days(std::chrono::days(*rc::gen::inRange(0, 3))));
      }
      ways.push_back(way);
    }
    out.goods.push_back(std::move(ways));
  }
  return out;
}

/// Straight from what it means, and not as the search reckons.
Money cost_by_hand(const Market& market, const std::vector<std::size_t>& ways) {
  Money out;
  for (std::size_t s = 0; s < market.suppliers.size(); ++s) {
    std::map<std::optional<LocalTime>, Money> days;
    for (std::size_t i = 0; i < ways.size(); ++i) {
      const BuyingWay& way = market.goods[i][ways[i]];
      if (way.supplier != s) continue;
      days[way.day] += way.cost;
    }
    for (const auto& [day, goods] : days) {
      out += goods < market.suppliers[s].minimum ? market.suppliers[s].minimum : goods;
      out += market.suppliers[s].delivery;
    }
  }
  return out;
}

/// The least of all assignments, one after another.
Money least_by_trying(const Market& market) {
  std::vector<std::size_t> ways(market.goods.size(), 0);
  Money least = cost_by_hand(market, ways);
  for (;;) {
    std::size_t i = 0;
    while (i < ways.size() && ++ways[i] == market.goods[i].size()) ways[i++] = 0;
    if (i == ways.size()) return least;
    least = std::min(least, cost_by_hand(market, ways));
  }
}

}  // namespace

TEST_CASE("the search finds what trying every assignment finds") {
  CHECK(rc::check([] {
    const Market market = random_market();
    const Assignment found = least_assignment(market.goods, market.suppliers);
    RC_ASSERT(found.total == least_by_trying(market));
    RC_ASSERT(found.total == cost_by_hand(market, found.ways));
    RC_ASSERT(found.total == cost_of_ways(market.goods, market.suppliers, found.ways));
    RC_ASSERT(found.complete());
  }));
}

TEST_CASE("a search that stops early says a bound, and is no worse than the first ways") {
  CHECK(rc::check([] {
    const Market market = random_market();
    const auto steps = *rc::gen::inRange<std::size_t>(0, 12);
    const Assignment found = least_assignment(market.goods, market.suppliers, steps);
    const Money least = least_by_trying(market);
    RC_ASSERT(found.bound <= least);
    RC_ASSERT(least <= found.total);
    RC_ASSERT(found.total == cost_by_hand(market, found.ways));
    const std::vector<std::size_t> first(market.goods.size(), 0);
    RC_ASSERT(found.total <= cost_by_hand(market, first));
  }));
}
