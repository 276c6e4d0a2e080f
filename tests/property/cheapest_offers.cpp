// SPDX-License-Identifier: MIT
// What holds for the offers that `--cheapest` chooses.

#include "platewright/event/cheapest_offers.hpp"

#include "support/catch.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Up to three offers of every ingredient, packs and pieces.
TestKitchen kitchen_with_offers() {
  TestKitchen out = random_kitchen();
  for (auto& [name, entry] : out.prices.entries) {
    const int more = *rc::gen::inRange(0, 3);
    for (int i = 0; i < more; ++i) {
      Purchase other = entry.purchases.front();
      other.content = random_weight();
      other.price = money(fraction(*rc::gen::inRange<std::int64_t>(1, 10000), 100));
      other.supplier = "supplier " + std::to_string(i);
      other.by_the_piece = *rc::gen::arbitrary<bool>();
      if (*rc::gen::arbitrary<bool>()) other.least = *rc::gen::inRange(1, 5);
      entry.purchases.push_back(std::move(other));
    }
  }
  return out;
}

}  // namespace

TEST_CASE("the cheapest offers never cost more than the preferred ones") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = kitchen_with_offers();
    std::vector<Occasion> occasions;
    const int count = *rc::gen::inRange(1, 4);
    for (int i = 0; i < count; ++i) {
      occasions.push_back({random_event(), kitchen.book, kitchen.prices});
    }
    const Money total = order_of_day(with_cheapest_offers(occasions)).total;
    RC_ASSERT(total <= order_of_day(occasions).total);
  }));
}

TEST_CASE("no other single offer would make the order of pack goods cheaper") {
  CHECK(rc::check([] {
    TestKitchen kitchen = kitchen_with_offers();
    for (auto& [name, entry] : kitchen.prices.entries) {
      for (Purchase& purchase : entry.purchases) purchase.by_the_piece = false;
    }
    const std::vector<Event> events{random_event()};
    const PriceList cheapest =
        with_cheapest_offers(std::vector<Occasion>{{events[0], kitchen.book, kitchen.prices}})
            .front()
            .prices;
    const Money total = order_of_day(events, kitchen.book, cheapest).total;
    for (const auto& [name, entry] : cheapest.entries) {
      for (std::size_t i = 1; i < entry.purchases.size(); ++i) {
        PriceList other = cheapest;
        std::swap(other.entries[name].purchases[0], other.entries[name].purchases[i]);
        RC_ASSERT(total <= order_of_day(events, kitchen.book, other).total);
      }
    }
  }));
}
