// SPDX-License-Identifier: MIT
// What is cooked, what is ordered and when it is done are views of one plan.

#include <rapidcheck.h>

#include <algorithm>
#include <map>

#include "platewright/event/event_plan.hpp"
#include "support/catch.hpp"
#include "support/change_each.hpp"
#include "support/random_kitchen.hpp"
#include "support/tables.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Recipes with steps that take a while, suppliers with days.
EventPlan random_plan() {
  TestKitchen kitchen = random_kitchen();
  change_each(kitchen.book.recipes, [&](Recipe& recipe) {
    const int steps = *rc::gen::inRange(0, 3);
    for (int i = 0; i < steps; ++i) {
      const Rational least = random_number(600);
      const TimeSpan takes{Duration::of(least, units::minute),
                           Duration::of(least + random_number(100), units::minute)};
      recipe.steps.push_back(MethodStep{"Wait.", {}, takes, false, {}});
    }
  });
  for (auto& [name, entry] : kitchen.prices.entries) {
    if (*rc::gen::arbitrary<bool>()) entry.purchases.front().days = *rc::gen::inRange(0, 5);
  }
  return EventPlan(Occasion{random_event(), kitchen.book, kitchen.prices});
}

std::vector<const ScaledRecipe*> cards_of(const EventPlan& plan) {
  std::vector<const ScaledRecipe*> out;
  for (const DishPlan& dish : plan.production().dishes) out.push_back(&dish.scaled);
  for (const SubRecipePlan& sub : plan.production().sub_recipes) out.push_back(&sub.scaled);
  return out;
}

/// What the lines of all cards take from the store, in the canonical unit.
std::map<std::string, Rational> taken_by_cards(const EventPlan& plan) {
  std::map<std::string, Rational> out;
  for (const ScaledRecipe* scaled : cards_of(plan)) {
    for (const ScaledLine& line : scaled->lines) {
      if (line.recipe != nullptr) continue;
      const std::string& name = line.line->name;
      const Purchase& offer = plan.prices().find(name)->purchases.front();
      out[name] += bought_for(*scaled, line, plan.recipes().ingredient(name), plan.recipes(), offer)
                       ->amount.canonical();
    }
  }
  return out;
}

}  // namespace

TEST_CASE("what the cards of a plan take is what its order covers") {
  CHECK(rc::check([] {
    const EventPlan plan = random_plan();
    std::map<std::string, Rational> needed;
    const Order order = plan.order();
    for (const SupplierOrder& supplier : order.suppliers) {
      for (const OrderLine& line : supplier.lines) {
        needed[line.ingredient] += line.need.canonical();
        RC_ASSERT(line.ordered.canonical() >= line.need.canonical());
      }
    }
    RC_ASSERT(needed == taken_by_cards(plan));
  }));
}

TEST_CASE("a plan's timeline has the days of its order, and nothing begins before its goods") {
  CHECK(rc::check([] {
    const EventPlan plan = random_plan();
    const Order order = plan.order();
    const Timeline timeline = plan.timeline(the_tables().safety);
    const auto begins = [&](const LocalTime& day) {
      return timeline.zone.day_begins(std::chrono::floor<std::chrono::days>(day));
    };
    const auto has = [&](TimelineKind kind, const LocalTime& day, const std::string& supplier) {
      return std::any_of(
          timeline.entries.begin(), timeline.entries.end(), [&](const TimelineEntry& entry) {
            return entry.kind == kind && entry.supplier == supplier && entry.latest == begins(day);
          });
    };
    for (const SupplierOrder& supplier : order.suppliers) {
      if (supplier.order_by) {
        RC_ASSERT(has(TimelineKind::order, *supplier.order_by, supplier.supplier));
      }
      for (const OrderLine& line : supplier.lines) {
        RC_ASSERT(line.deliver_by.has_value());
        RC_ASSERT(has(TimelineKind::delivery, *line.deliver_by, supplier.supplier));
        for (const TimelineEntry& entry : timeline.entries) {
          const bool used = std::find(line.used_by.begin(), line.used_by.end(), entry.recipe) !=
                            line.used_by.end();
          if (used) RC_ASSERT(begins(*line.deliver_by) <= entry.earliest.value_or(entry.latest));
        }
      }
    }
  }));
}
