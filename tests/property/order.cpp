// SPDX-License-Identifier: MIT
// What holds for any production and its order.

#include "platewright/event/order.hpp"

#include "platewright/event/event_cost.hpp"
#include "support/catch.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

struct OrderedOccasion {
  TestKitchen kitchen = random_kitchen();
  Event event = random_event();
  Production production = plan_production(event, kitchen.book, kitchen.prices);
  Order order = make_order(event, production, kitchen.book, kitchen.prices);
};

}  // namespace

TEST_CASE("an order covers the need, and one pack fewer would not") {
  CHECK(rc::check([] {
    const OrderedOccasion occasion;
    for (const SupplierOrder& supplier : occasion.order.suppliers) {
      for (const OrderLine& line : supplier.lines) {
        RC_ASSERT(line.ordered.number >= line.need.number);
        RC_ASSERT(line.ordered.number - line.purchase.content.number < line.need.number);
        RC_ASSERT(sum(line.need, line.left_over) == line.ordered);
        RC_ASSERT(line.cost == line.purchase.price * Rational(line.packs));
      }
    }
  }));
}

TEST_CASE("what is used of an order costs what the plates cost") {
  CHECK(rc::check([] {
    const OrderedOccasion occasion;
    const EventCost cost = event_cost(occasion.event, occasion.production, occasion.kitchen.book,
                                      occasion.kitchen.prices);
    RC_ASSERT(occasion.order.used_value == cost.food);
    RC_ASSERT(occasion.order.used_value + occasion.order.left_over_value == occasion.order.total);
  }));
}

TEST_CASE("suppliers sum to the order and stand in the order of their names") {
  CHECK(rc::check([] {
    const OrderedOccasion occasion;
    Money total;
    std::vector<std::string> names;
    for (const SupplierOrder& supplier : occasion.order.suppliers) {
      Money of_supplier;
      for (const OrderLine& line : supplier.lines) of_supplier += line.cost;
      RC_ASSERT(of_supplier == supplier.total);
      total += of_supplier;
      names.push_back(supplier.supplier);
    }
    RC_ASSERT(total == occasion.order.total);
    RC_ASSERT(std::is_sorted(names.begin(), names.end()));
  }));
}

TEST_CASE("every sub-recipe is made once, before those that use it, and in full") {
  CHECK(rc::check([] {
    const OrderedOccasion occasion;
    std::map<std::string, Rational> taken;
    std::set<std::string> made;
    const auto take = [&](const ScaledRecipe& user) {
      for (const ScaledLine& line : user.lines) {
        if (line.recipe == nullptr) continue;
        RC_ASSERT(made.count(line.line->name) == 1U);
        taken[line.line->name] += line.amount.low()->canonical();
      }
    };
    for (const SubRecipePlan& plan : occasion.production.sub_recipes) {
      take(plan.scaled);
      RC_ASSERT(made.insert(plan.scaled.recipe->name).second);
    }
    for (const DishPlan& dish : occasion.production.dishes) take(dish.scaled);
    for (const SubRecipePlan& plan : occasion.production.sub_recipes) {
      RC_ASSERT(plan.needed.canonical() == taken[plan.scaled.recipe->name]);
    }
  }));
}
