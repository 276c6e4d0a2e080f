// SPDX-License-Identifier: MIT
// What holds for one order for several events.

#include "platewright/event/order_of_day.hpp"

#include <algorithm>

#include "platewright/costing/converted_prices.hpp"
#include "platewright/costing/current_prices.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/random_kitchen.hpp"
#include "support/supper.hpp"

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

namespace {

/// Events of a kitchen whose prices change from month to month, each on its own day's.
std::vector<Occasion> occasions_of_several_days() {
  TestKitchen kitchen = random_kitchen();
  for (auto& [name, entry] : kitchen.prices.entries) {
    if (*rc::gen::arbitrary<bool>()) entry.in_store = random_weight();
    const Purchase first = entry.purchases.front();
    for (const char* day : {"2027-10-05", "2027-11-05"}) {
      if (*rc::gen::arbitrary<bool>()) continue;
      Purchase later = first;
      later.on = read_local_day(day);
      later.price = money(fraction(*rc::gen::inRange<std::int64_t>(1, 10000), 100));
      entry.purchases.push_back(std::move(later));
    }
  }
  std::vector<Occasion> out;
  for (const char* at : {"2027-10-01 12:00", "2027-10-09 18:30", "2027-12-01 12:00"}) {
    Event event = random_event();
    event.name = at;
    event.at = read_local_time(at);
    const auto day = std::chrono::floor<std::chrono::days>(event.at->local());
    out.push_back({event, kitchen.book, current_prices(kitchen.prices, day)});
  }
  return out;
}

/// All that an order says of what is bought, by supplier and line.
std::vector<std::string> written(const Order& order) {
  std::vector<std::string> out;
  for (const SupplierOrder& supplier : order.suppliers) {
    for (const OrderLine& line : supplier.lines) {
      out.push_back(supplier.supplier + " " + line.ingredient + " " + line.packs.str() + " " +
                    as_exact(line.need.number) + " " +
                    as_exact(line.purchase.price.in(units::currency_unit)) + " " +
                    (line.in_store ? as_exact(line.in_store->number) : "none"));
    }
  }
  out.push_back(as_exact(order.total.in(units::currency_unit)));
  return out;
}

}  // namespace

TEST_CASE("events of several days give one order, whichever is named first") {
  CHECK(rc::check([] {
    std::vector<Occasion> occasions = occasions_of_several_days();
    const auto first = written(order_of_day(occasions));
    std::rotate(occasions.begin(), occasions.begin() + *rc::gen::inRange(0, 3), occasions.end());
    if (*rc::gen::arbitrary<bool>()) std::swap(occasions[0], occasions[1]);
    RC_ASSERT(written(order_of_day(occasions)) == first);
  }));
}

TEST_CASE("an event's goods go by the prices of its own day, in company too") {
  CHECK(rc::check([] {
    std::vector<Occasion> occasions = occasions_of_several_days();
    Money apart;
    for (Occasion& occasion : occasions) {
      for (auto& [name, entry] : occasion.prices.entries) entry.in_store = std::nullopt;
      apart += order_of_day({occasion}).total;
    }
    const Order together = order_of_day(occasions);
    RC_ASSERT(together.total <= apart);
    for (const SupplierOrder& supplier : together.suppliers) {
      for (const OrderLine& line : supplier.lines) {
        RC_ASSERT(std::any_of(occasions.begin(), occasions.end(), [&](const Occasion& occasion) {
          const PriceEntry* entry = occasion.prices.find(line.ingredient);
          return entry->purchases.front().price == line.purchase.price;
        }));
      }
    }
  }));
}

TEST_CASE("prices in two currencies are never added up") {
  const TestKitchen kitchen = supper_kitchen();
  PriceList euro = kitchen.prices;
  euro.currency = Currency("EUR");
  const std::vector<Occasion> both{{supper(), kitchen.book, kitchen.prices},
                                   {supper(), kitchen.book, euro}};
  CHECK(problem_of([&] { order_of_day(both); }).id == "exchange-rate-missing");
  const PriceList converted = in_currency(
      euro, Currency("USD"), ForeignCurrency{Currency("EUR"), fraction(3, 2), "a bank"});
  const Money one = order_of_day({supper()}, kitchen.book, kitchen.prices).total;
  CHECK(order_of_day({supper()}, kitchen.book, converted).total == one * fraction(3, 2));
}
