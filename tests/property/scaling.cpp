// SPDX-License-Identifier: MIT
// Scaling by a and then by b is scaling by ab: for which rules it holds, and for which it can't.

#include <rapidcheck.h>

#include <cstddef>

#include "platewright/recipe/scaled_recipe.hpp"
#include "support/catch.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

constexpr const char* amounts[] = {"2 lb", "3 1/2 cups", "7 cloves", "1-2 tbsp", "to taste"};

const RecipeBook meat = two_pounds_a_litre({"x"});

/// A line for every rule and every kind of amount; roasts of 8 lb in tubs of 10 L for one.
Recipe every_rule() {
  Recipe out = recipe_for("all", 10, {});
  for (const ScalingRuleName& row : scaling_rule_names) {
    for (const char* text : amounts) out.lines.push_back(line("x", text, row.rule));
  }
  out.tested = TestedPieces{1, "leg", pounds(8)};
  out.vessel = RecipeVessel{"tub", Volume::of(10, units::litre), Rational(1), ""};
  return out;
}

/// The recipe as it would be written down at its new size: the new batch is the tested one, made in
/// the same bowl and the same vessels.
Recipe rewritten(const ScaledRecipe& scaled) {
  Recipe out = *scaled.recipe;
  for (std::size_t i = 0; i < out.lines.size(); ++i) out.lines[i].amount = scaled.lines[i].amount;
  out.makes.portions = scaled.plan.portions;
  out.largest_batch = out.largest_batch.value_or(1) / scaled.plan.factor;
  if (out.tested) {
    out.tested->count = *scaled.plan.pieces;
    out.tested->weight = *scaled.plan.piece_weight;
  }
  return out;
}

bool is_published(ScalingRule rule) {
  return !source_of(rule).empty();
}

std::int64_t small_count() {
  return *rc::gen::inRange<std::int64_t>(1, 30);
}

}  // namespace

TEST_CASE("by a and then by b is by ab, for every rule but the published ones") {
  CHECK(rc::check("whole pieces of any weight", [] {
    const Recipe recipe = every_rule();
    const Rational a = small_count();
    const Rational ab = a * small_count();
    const Mass light = Mass::of(*rc::gen::inRange<std::int64_t>(4, 17), units::pound);
    const ScaledRecipe first = scale(recipe, plan_for_pieces(recipe, a, meat, light), meat);
    const Recipe between = rewritten(first);
    const ScaledRecipe then = scale(between, plan_for_pieces(between, ab, meat, light), meat);
    const ScaledRecipe at_once = scale(recipe, plan_for_pieces(recipe, ab, meat, light), meat);
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
      if (is_published(recipe.lines[i].scale)) continue;
      RC_ASSERT(then.lines[i].amount == at_once.lines[i].amount);
    }
  }));
}

TEST_CASE("by any a and then by any b is by ab, where nothing is whole") {
  CHECK(rc::check("fractions", [] {
    Recipe recipe = recipe_for("plain", 10, {});
    for (const ScalingRule rule : {ScalingRule::proportional, ScalingRule::held_back,
                                   ScalingRule::by_batch, ScalingRule::fixed}) {
      for (const char* text : amounts) recipe.lines.push_back(line("x", text, rule));
    }
    const Rational a = random_number(20);
    const Rational b = random_number(20);
    const Recipe between = rewritten(scale(recipe, plan_for_factor(recipe, a, meat), meat));
    const ScaledRecipe then = scale(between, plan_for_factor(between, b, meat), meat);
    const ScaledRecipe at_once = scale(recipe, plan_for_factor(recipe, a * b, meat), meat);
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
      RC_ASSERT(then.lines[i].amount == at_once.lines[i].amount);
    }
  }));
}

// Twice and twice again by the herb formula is 2 x 2 = 4; four times at once is 3. By the rule for
// spices it is 2 1/4 against 2 1/2, by that for hot pepper 4 against 2 1/2.
TEST_CASE("the published rules for spices depend on the tested batch") {
  struct Case {
    ScalingRule rule;
    Rational in_two_steps;
    Rational at_once;
  };
  for (const Case& one :
       {Case{ScalingRule::spice_on_double, fraction(9, 4), fraction(5, 2)},
        Case{ScalingRule::herb_formula, 4, 3}, Case{ScalingRule::hot_pepper, 4, fraction(5, 2)}}) {
    CHECK(spice_factor(one.rule, 2) * spice_factor(one.rule, 2) == one.in_two_steps);
    CHECK(spice_factor(one.rule, 4) == one.at_once);
  }
}

// 1 1/2 batches are made in two, and 1 1/2 times that, if it is one batch now, in two again, which
// is four; 2 1/4 batches are three.
TEST_CASE("what is counted in whole batches depends on what one batch is") {
  const Recipe recipe = recipe_for("gratin", 10, {line("butter", "1 oz", ScalingRule::by_batch)});
  Recipe between = rewritten(scale(recipe, plan_for_factor(recipe, fraction(3, 2), meat), meat));
  between.largest_batch.reset();
  const auto then =
      scale(between, plan_for_factor(between, fraction(3, 2), meat), meat).lines[0].amount;
  const auto at_once =
      scale(recipe, plan_for_factor(recipe, fraction(9, 4), meat), meat).lines[0].amount;
  CHECK(then.low() == amount("4 oz"));
  CHECK(at_once.low() == amount("3 oz"));
}

TEST_CASE("the scaled weights sum to the scaled sum of the weights") {
  CHECK(rc::check("sums", [] {
    Recipe recipe = recipe_for("sum", 10, {});
    Rational before;
    for (int i = 0; i < 5; ++i) {
      const Amount weight = random_weight();
      recipe.lines.push_back(line("x", weight));
      before += weight.canonical();
    }
    const Rational factor = random_number(50);
    Rational after;
    for (const ScaledLine& line :
         scale(recipe, plan_for_factor(recipe, factor, meat), meat).lines) {
      after += line.amount.low()->canonical();
    }
    RC_ASSERT(after == before * factor);
  }));
}
