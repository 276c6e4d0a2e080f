// SPDX-License-Identifier: MIT
// A what-if gives what the same book gives when it is written so.

#include <rapidcheck.h>

#include <algorithm>

#include "platewright/event/changes.hpp"
#include "support/catch.hpp"
#include "support/change_each.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// A random kitchen in which some ingredients are cuts and some lines shares of others.
TestKitchen kitchen_with_shares() {
  TestKitchen out = random_kitchen();
  change_each(out.book.ingredients, [&](Ingredient& ingredient) {
    if (*rc::gen::inRange(0, 3) == 0) return;
    Rung cooked;
    cooked.to = Stage::served;
    cooked.yield = fraction(*rc::gen::inRange<std::int64_t>(2, 20), 20);
    cooked.holds = {Loss::cooking};
    ingredient.is_cut = true;
    ingredient.ladder = Ladder({cooked});
  });
  change_each(out.book.recipes, [&](Recipe& recipe) {
    const RecipeLine& first = recipe.lines.front();
    const bool of_meat = out.book.ingredient(first.name).is_cut && *rc::gen::arbitrary<bool>();
    recipe.lines.push_back(line(
        "ingredient 4", builders::share_of(fraction(*rc::gen::inRange<std::int64_t>(1, 50), 100),
                                           {of_meat ? "meat" : first.name})));
  });
  return out;
}

/// How much of `to` serves as much as 1 of `from`, for a line written as purchased.
Rational instead_of(const RecipeBook& book, const std::string& from, const std::string& to) {
  const Ingredient& old_cut = book.ingredient(from);
  const Ingredient& new_cut = book.ingredient(to);
  if (!old_cut.is_cut || !new_cut.is_cut) return 1;
  return old_cut.ladder.yield() / new_cut.ladder.yield();
}

/// The recipe written down anew with the other ingredient.
Recipe written_with(const RecipeBook& book, const Recipe& recipe, const std::string& from,
                    const std::string& to) {
  Recipe out;
  out.name = recipe.name;
  out.makes = recipe.makes;
  for (const RecipeLine& old : recipe.lines) {
    const std::string name = old.name == from ? to : old.name;
    if (const WeightShare* share = old.amount.share()) {
      std::vector<std::string> of;
      for (const std::string& base : share->of) of.push_back(base == from ? to : base);
      out.lines.push_back(line(name, builders::share_of(share->share, of)));
      continue;
    }
    const Rational more = old.name == from ? instead_of(book, from, to) : Rational(1);
    out.lines.push_back(line(name, scaled(*old.amount.amount(), more)));
  }
  return out;
}

}  // namespace

TEST_CASE("a swap gives what the recipes give that are written so") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = kitchen_with_shares();
    const std::string from = "ingredient " + std::to_string(*rc::gen::inRange(0, 4));
    const std::string to = "ingredient " + std::to_string(*rc::gen::inRange(0, 5));
    Occasion asked{random_event(), kitchen.book, kitchen.prices};
    Occasion written = asked;
    bool used = false;
    change_each(written.book.recipes, [&](Recipe& recipe) {
      for (const RecipeLine& line : recipe.lines) used = used || line.name == from;
      recipe = written_with(kitchen.book, recipe, from, to);
    });
    RC_PRE(used);
    swap_in(asked, {from, to});
    const auto cost_or_problem = [](const Occasion& occasion) {
      try {
        return as_exact(amount_of(event_cost(occasion).food));
      } catch (const Failure& failure) {
        return failure.problem().id;
      }
    };
    RC_ASSERT(cost_or_problem(asked) == cost_or_problem(written));
  }));
}

TEST_CASE("a price that is changed gives what the list gives that is written so") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = kitchen_with_shares();
    Occasion asked{random_event(), kitchen.book, kitchen.prices};
    Occasion written = asked;
    const std::string name = "ingredient " + std::to_string(*rc::gen::inRange(0, 5));
    const Rational factor = random_number(3);
    written.prices.entries[name].purchases.front().price =
        written.prices.entries[name].purchases.front().price * factor;
    change_price(asked, {name, factor, std::nullopt, std::nullopt});
    RC_ASSERT(event_cost(asked).food == event_cost(written).food);
  }));
}
