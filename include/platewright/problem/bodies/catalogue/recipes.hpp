// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/recipes.hpp.

#include <utility>

#include "platewright/problem/catalogue/recipes.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem portions_and_yield_differ(std::string_view recipe,
                                                   std::string_view portions,
                                                   std::string_view by_yield) {
  return make_problem(
      "portions-and-yield-differ",
      in_quotes(recipe) + " makes " + std::string(portions) + " portions, where its meat serves " +
          std::string(by_yield) + " of that size by the yield of its cut",
      "`makes` at most 5 % above what the meat serves, and at most 20 % below it",
      "weigh what you serve and correct `makes`, or keep your own `tested yields`; where a portion "
      "holds more than the meat write `makes: 20 portions of 8 oz, whole dish`. Until then the "
      "smaller number counts");
}

PLATEWRIGHT_BODY Problem portion_holds_bone(std::string_view recipe, std::string_view ingredient,
                                            std::string_view held, std::string_view row) {
  return make_problem(
      "portion-holds-bone",
      in_quotes(recipe) + " serves portions by weight of " + in_quotes(ingredient) +
          ", whose yield (" + std::string(row) + ") ends with the " + std::string(held) +
          " in the weight",
      "a yield that takes the " + std::string(held) + " out before a portion is weighed",
      "ask `platewright yield` for the row that takes it out, or add `tested yields` of your own "
      "that go on to served; where the portion is meant with it write "
      "`makes: 20 portions of 8 oz, whole dish`");
}

PLATEWRIGHT_BODY Problem recipe_cycle(const std::vector<std::string>& names) {
  std::string chain;
  for (const std::string& name : names) {
    if (!chain.empty()) chain += " -> ";
    chain += in_quotes(name);
  }
  return make_problem("recipe-cycle", "recipes that use each other in a circle: " + chain,
                      "recipes that lead down to bought ingredients",
                      "take one of the links out, or buy that ingredient ready made");
}

PLATEWRIGHT_BODY Problem recipes_too_deep(std::string_view recipe, std::size_t most) {
  return make_problem("recipes-too-deep",
                      "below " + in_quotes(recipe) + " more than " + std::to_string(most) +
                          " recipes, each made of the next",
                      "at most " + std::to_string(most) + " levels of recipes",
                      "write the lines of some of them into the recipes that use them");
}

PLATEWRIGHT_BODY Problem plan_too_large(std::size_t most) {
  return make_problem("plan-too-large",
                      "more than " + std::to_string(most) + " lines in all that is made",
                      "at most " + std::to_string(most) + " lines of dishes and of what is in them",
                      "plan fewer dishes at a time");
}

PLATEWRIGHT_BODY Problem recipe_has_no_portions(std::string_view recipe) {
  return make_problem("recipe-no-portions", in_quotes(recipe) + " does not say how many it serves",
                      "`makes: 10 portions of 6 oz`",
                      "write it, or scale by a factor instead of by portions");
}

PLATEWRIGHT_BODY Problem recipe_has_no_portion_size(std::string_view recipe) {
  return make_problem(
      "recipe-no-portion-size", in_quotes(recipe) + " does not say how large its portions are",
      "`makes: 10 portions of 6 oz`", "write it, or scale by portions or by a factor");
}

PLATEWRIGHT_BODY Problem recipe_has_no_pieces(std::string_view recipe) {
  return make_problem(
      "recipe-no-pieces", in_quotes(recipe) + " does not say on what pieces it was tested",
      "`tested on: 1 leg of 7.5 lb`", "write it, or scale by portions or by a factor");
}

PLATEWRIGHT_BODY Problem recipe_has_no_amount(std::string_view recipe) {
  return make_problem("recipe-no-amount", in_quotes(recipe) + " does not say how much it makes",
                      "`makes: 2 qt`", "write it, since another recipe takes an amount of it");
}

PLATEWRIGHT_BODY Problem recipe_amount_unreachable(std::string_view recipe, std::string_view makes,
                                                   std::string_view wanted) {
  return make_problem("recipe-amount-unreachable",
                      in_quotes(recipe) + " makes " + std::string(makes) + " and " +
                          std::string(wanted) + " of it is wanted",
                      "an amount in the same dimension as what the recipe makes",
                      "write both in weight or both in capacity");
}

PLATEWRIGHT_BODY Problem recipe_makes_malformed(std::string_view text, std::string remedy) {
  return make_problem("recipe-makes", in_quotes(text),
                      "what the recipe makes, as in `10 portions of 6 oz`, `24 portions` or `2 qt`",
                      std::move(remedy));
}

PLATEWRIGHT_BODY Problem tested_on_malformed(std::string_view text) {
  return make_problem("recipe-tested-on", in_quotes(text),
                      "whole pieces and the weight of one, as in `1 leg of 7.5 lb`",
                      "write it in this form");
}

PLATEWRIGHT_BODY Problem oven_step_malformed(std::string_view text) {
  return make_problem("oven-step", in_quotes(text),
                      "an oven setting such as `450 F for 25 min` or `325 F until 130 F inside`",
                      "write it in one of these forms");
}

PLATEWRIGHT_BODY Problem time_span_malformed(std::string_view text) {
  return make_problem("time-span", in_quotes(text), "a time such as `20 min` or `12 h to 48 h`",
                      "write it in one of these forms");
}

PLATEWRIGHT_BODY Problem step_uses_unknown(std::string_view name,
                                           const std::vector<std::string>& lines) {
  std::string remedy = did_you_mean(name, lines);
  if (remedy.empty()) remedy = "add the line, or take the name out of the step";
  return make_problem("step-uses-unknown", "a step that uses " + in_quotes(name),
                      "a line of this recipe", std::move(remedy));
}

PLATEWRIGHT_BODY Problem line_not_used(std::string_view line) {
  return make_problem("line-not-used", "no step uses " + in_quotes(line),
                      "every line in the `uses` of a step",
                      "add it to a step, so that the cook sees its amount there");
}

PLATEWRIGHT_BODY Problem recipe_not_made(std::string_view recipe) {
  return make_problem("recipe-not-made", in_quotes(recipe) + " is not made for this event",
                      "a dish of the menu, or what a dish uses",
                      "name a size to print its card all the same, as in `--portions 20`");
}

PLATEWRIGHT_BODY Problem portion_missing() {
  return make_problem("portion-missing", "guests without a portion",
                      "the weight of a portion on the plate", "add it, as in `--portion \"6 oz\"`");
}

PLATEWRIGHT_BODY Problem scale_missing_factor() {
  return make_problem("scale-nothing", "nothing to scale to",
                      "one of portions, pieces, a factor, or a weight on hand", "name one");
}

PLATEWRIGHT_BODY Problem short_line_unusable(std::string_view line, std::string_view rule) {
  return make_problem("short-not-in-proportion",
                      in_quotes(line) + ", which is scaled " + std::string(rule),
                      "an ingredient whose amount follows the factor or the pieces",
                      "scale by another ingredient, by portions or by a factor");
}

PLATEWRIGHT_BODY Problem short_in_wholes(std::string_view line, std::string_view recipe,
                                         std::string_view whole) {
  return make_problem("short-in-wholes",
                      in_quotes(line) + " in " + in_quotes(recipe) +
                          ", which is made by the whole " + std::string(whole),
                      "sub-recipes that are made at any size, so that one factor uses up what is "
                      "on hand",
                      "scale by portions or by a factor, and see with `--with-sub-recipes` what it "
                      "takes");
}

PLATEWRIGHT_BODY Problem short_malformed(std::string_view text) {
  return make_problem("short-malformed", in_quotes(text),
                      "an ingredient and how much of it there is, as in `garlic: 3 lb`",
                      "write it in this form");
}

PLATEWRIGHT_BODY Problem short_of_a_piece(std::string_view line, std::string_view piece) {
  return make_problem(
      "short-of-a-piece",
      "so little of " + in_quotes(line) + " that it is not enough for one " + std::string(piece),
      "enough for one whole " + std::string(piece),
      "find more of it, or scale by a factor instead");
}

PLATEWRIGHT_BODY Problem share_of_unknown(std::string_view name,
                                          const std::vector<std::string>& lines) {
  std::string remedy = did_you_mean(name, lines);
  if (remedy.empty()) remedy = "name other lines of the recipe, each of which has a weight";
  return make_problem("share-of-unknown", "a share of the weight of " + in_quotes(name),
                      "the name of a line of this recipe whose weight is known, or `meat`",
                      std::move(remedy));
}

PLATEWRIGHT_BODY Problem largest_batch_malformed(std::string_view text) {
  return make_problem("largest-batch", in_quotes(text),
                      "how many tested batches are made at once at most, as in `3 times`",
                      "write a number above 0 and `times`");
}

PLATEWRIGHT_BODY Problem by_surface_without_pieces(std::string_view line) {
  return make_problem("surface-no-pieces",
                      in_quotes(line) + " follows pieces that the recipe does not name",
                      "`tested on: 1 leg of 7.5 lb`",
                      "write on what the recipe was tested, or scale the line in proportion");
}

}  // namespace platewright::problems
