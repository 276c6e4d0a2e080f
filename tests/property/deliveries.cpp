// SPDX-License-Identifier: MIT
// Suppliers' days made up at random: what is planned is the last day that may be, and no other.

#include "platewright/event/deliveries.hpp"

#include <rapidcheck.h>

#include "platewright/event/event_cost.hpp"
#include "platewright/event/order_of_day.hpp"
#include "support/catch.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Supplier random_supplier() {
  Supplier out;
  for (unsigned day = 0; day < 7; ++day) {
    if (*rc::gen::inRange(0, 3) == 0) out.delivers.emplace_back(day);
  }
  const int spans = *rc::gen::inRange(0, 3);
  for (int i = 0; i < spans; ++i) {
    const auto first = read_local_day("2027-10-09") - std::chrono::days(*rc::gen::inRange(-3, 40));
    out.closed.push_back({first, first + std::chrono::days(*rc::gen::inRange(0, 12))});
  }
  if (*rc::gen::inRange(0, 2) == 0) out.cut_off = CutOff{*rc::gen::inRange(0, 6), std::nullopt};
  out.minimum = money(fraction(*rc::gen::inRange<std::int64_t>(0, 400), 4));
  out.delivery_charge = money(fraction(*rc::gen::inRange<std::int64_t>(0, 40), 4));
  out.one_delivery = *rc::gen::inRange(0, 4) == 0;
  return out;
}

bool may_come(const Supplier& supplier, const std::chrono::local_days& day) {
  return supplier.comes_on(day) && !supplier.closed_on(day);
}

}  // namespace

TEST_CASE("goods come on the last open delivery day before they are used") {
  CHECK(rc::check([] {
    const Supplier supplier = random_supplier();
    const auto latest = read_local_day("2027-10-09");
    const auto found = last_delivery(supplier, LocalTime(latest));
    for (auto day = latest; day > latest - std::chrono::days(most_days_before_use);
         day -= std::chrono::days(1)) {
      if (!may_come(supplier, day)) continue;
      RC_ASSERT(found == LocalTime(day));
      return;
    }
    RC_ASSERT(!found || day_part(*found) == latest - std::chrono::days(most_days_before_use));
  }));
}

TEST_CASE("every line of an order comes in time, and each of its days is charged once") {
  CHECK(rc::check([] {
    TestKitchen kitchen = random_kitchen();
    for (const char* name : {"the market", "the butcher", ""}) {
      kitchen.prices.suppliers[name] = random_supplier();
    }
    const Order order = order_of_day({random_event()}, kitchen.book, kitchen.prices);
    Money charges;
    for (const SupplierOrder& supplier : order.suppliers) {
      std::set<std::optional<LocalTime>> days;
      for (const OrderLine& line : supplier.lines) {
        days.insert(line.deliver_on);
        if (!line.deliver_on) continue;
        RC_ASSERT(*line.deliver_on <= *line.deliver_by);
        RC_ASSERT(may_come(supplier.terms, day_part(*line.deliver_on)));
        if (line.order_by) RC_ASSERT(*line.order_by <= *line.deliver_on);
        if (line.order_by) RC_ASSERT(!supplier.terms.closed_on(day_part(*line.order_by)));
      }
      Money goods;
      Money lacks;
      for (const Delivery& delivery : supplier.deliveries) {
        goods += delivery.goods;
        lacks += delivery.below_minimum;
        RC_ASSERT(days.count(delivery.on) == 1);
        RC_ASSERT(delivery.goods + delivery.below_minimum >= supplier.terms.minimum);
      }
      RC_ASSERT(goods == supplier.total);
      RC_ASSERT(lacks == supplier.below_minimum);
      RC_ASSERT(supplier.deliveries.size() == days.size());
      if (supplier.terms.one_delivery) {
        days.erase(std::nullopt);
        RC_ASSERT(days.size() <= 1);
      }
      charges += supplier.delivery_charges;
    }
    RC_ASSERT(charges == order.delivery_charges);
    RC_ASSERT(cost_of_deliveries(delivery_costs(order)) == charges);
    RC_ASSERT(order.to_pay() == order.total + order.deposit + charges);
  }));
}
