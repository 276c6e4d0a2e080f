// What holds for one order for several events.

#include "platewright/event/order_of_day.hpp"

#include "support/catch.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("splitting an order in two never makes it cheaper") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = random_kitchen();
    const Event first = random_event();
    const Event second = random_event();
    const auto total = [&](const std::vector<Event>& events) {
      return order_of_day(events, kitchen.book, kitchen.prices).total;
    };
    RC_ASSERT(total({first, second}) <= total({first}) + total({second}));
  }));
}

TEST_CASE("an event split in two by its guests is never cheaper in packs") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = random_kitchen();
    Event whole = random_event();
    whole.guests[0].count = *rc::gen::inRange<std::int64_t>(2, 300);
    whole.guests[1].count = 0;
    Event one = whole;
    Event other = whole;
    one.guests[0].count = *rc::gen::inRange<std::int64_t>(
        1, static_cast<std::int64_t>(floor_of(whole.guests[0].count)));
    other.guests[0].count = whole.guests[0].count - one.guests[0].count;
    const auto total = [&](const Event& event) {
      return order_of_day({event}, kitchen.book, kitchen.prices).total;
    };
    RC_ASSERT(total(whole) <= total(one) + total(other));
  }));
}

TEST_CASE("what is in store is never ordered, and the order with it covers the need") {
  CHECK(rc::check([] {
    TestKitchen kitchen = random_kitchen();
    const Event event = random_event();
    for (auto& [name, entry] : kitchen.prices.entries) entry.in_store = random_weight();
    const Order order = order_of_day({event}, kitchen.book, kitchen.prices);
    for (const SupplierOrder& supplier : order.suppliers) {
      for (const OrderLine& line : supplier.lines) {
        RC_ASSERT(line.ordered.number >= line.need.number);
        RC_ASSERT(line.ordered.number - line.purchase.content.number < line.need.number);
      }
    }
    for (const Need& need : order.all_there) {
      RC_ASSERT(need.in_store->canonical() >= need.purchased->canonical());
    }
  }));
}
