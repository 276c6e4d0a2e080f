// SPDX-License-Identifier: MIT
// Vessels and batches hold what is made, and their parts are the whole.

#include <rapidcheck.h>

#include <algorithm>

#include "platewright/recipe/part_amounts.hpp"
#include "support/catch.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// A line for every rule, and one that is a share of the meat; a leg of 8 lb, which takes up 4 L,
/// in a tub of 10 L, four legs at a time.
Recipe legs_in_tubs() {
  Recipe out = recipe_for("legs", 10, {line("leg", "8 lb")});
  for (const ScalingRuleName& row : scaling_rule_names) {
    out.lines.push_back(line("oil", "2 cups", row.rule));
  }
  out.lines.push_back(line("oil", WeightShare{fraction(1, 50), {"leg", "oil"}}));
  out.tested = TestedPieces{1, "leg", pounds(8)};
  out.largest_batch = 4;
  out.vessel = RecipeVessel{"tub", Volume::of(10, units::litre), Rational(1), ""};
  return out;
}

/// As large as its legs ask for, be they half as heavy again, or larger.
RecipeVessel random_tub() {
  const auto legs = *rc::gen::inRange<std::int64_t>(1, 8);
  return {"large tub", Volume::of(Rational(10 * legs) + random_number(4), units::litre),
          *rc::gen::element(std::optional<Rational>(legs), std::optional<Rational>()), ""};
}

Recipe soup() {
  Recipe out = recipe_for("soup", 4, {line("stock", "1 L")});
  out.makes.portion = amount("250 mL");
  return out;
}

}  // namespace

TEST_CASE("vessels hold the whole, one fewer would not, and none is too full") {
  CHECK(rc::check([] {
    const Rational content = random_number(60);
    const Rational capacity = 1 + random_number(9);
    const bool whole = *rc::gen::arbitrary<bool>();
    const Filling filling = spread_over(content, capacity, whole);
    Rational count;
    Rational held;
    for (const FilledAlike& part : filling.parts) {
      RC_ASSERT(part.times > 0);
      RC_ASSERT(part.content > 0);
      RC_ASSERT(part.content <= filling.fullest().content);
      count += part.times;
      held += part.times * part.content;
    }
    RC_ASSERT(held == content);
    RC_ASSERT(count == filling.count);
    RC_ASSERT(is_whole(count));
    RC_ASSERT(filling.fullest().content <= filling.capacity);
    RC_ASSERT(filling.capacity <= capacity);
    RC_ASSERT((count - 1) * filling.capacity < content);
  }));
}

TEST_CASE("what goes into each vessel and each batch adds up to every line") {
  CHECK(rc::check([] {
    const Recipe recipe = legs_in_tubs();
    const RecipeBook book = two_pounds_a_litre({"leg", "oil"});
    const auto legs = *rc::gen::inRange<std::int64_t>(1, 60);
    const Mass weight =
        Mass::of(fraction(*rc::gen::inRange<std::int64_t>(60, 121), 10), units::pound);
    const ScalePlan plan =
        in_vessels(recipe, plan_for_pieces(recipe, legs, book, weight), random_tub(), book);
    const ScaledRecipe scaled = scale(recipe, plan, book);
    for (const PartOf what : {PartOf::vessels, PartOf::batches}) {
      for (std::size_t i = 0; i < scaled.lines.size(); ++i) {
        Rational whole;
        for (const FilledAlike& part : filling_of(scaled.plan, what)->parts) {
          const Rational share = share_in_part(scaled, i, what, part, book);
          RC_ASSERT(share >= 0);
          whole += share * part.times;
        }
        RC_ASSERT(whole == 1);
      }
    }
  }));
}

TEST_CASE("a larger vessel is never needed more often, and all of them hold the soup") {
  CHECK(rc::check([] {
    const Recipe recipe = soup();
    const ScalePlan plan = plan_for_factor(recipe, random_number(100), no_book);
    const RecipeVessel small{"pan", Volume::of(random_number(30), units::litre), std::nullopt, ""};
    RecipeVessel large = small;
    large.volume = *small.volume + Volume::of(random_number(30), units::litre);
    const ScalePlan in_small = in_vessels(recipe, plan, small, no_book);
    const ScalePlan in_large = in_vessels(recipe, plan, large, no_book);
    RC_ASSERT(in_large.vessels->count <= in_small.vessels->count);
    RC_ASSERT(*small.volume * in_small.vessels->count >= Volume::of(1, units::litre) * plan.factor);
    RC_ASSERT(!overflow_of(scale(recipe, in_small, no_book), no_book));
  }));
}
