// SPDX-License-Identifier: MIT
#include "card/sheets/recipe_card_size.hpp"

#include "card/sheets/part_table.hpp"
#include "card/sheets/shared.hpp"
#include "platewright/card/number_text.hpp"
#include "platewright/costing/plate_cost.hpp"
#include "platewright/problem/plural.hpp"
#include "platewright/recipe/cover_check.hpp"
#include "platewright/recipe/roasting_time.hpp"

namespace platewright::card {
namespace {

/// Both scales, the one of the book's measures first.
std::string degrees(const Temperature& temperature, Rounding rounding, const KitchenView& view) {
  return view.system() == MeasuringSystem::us ? fahrenheit_text(temperature, rounding)
                                              : celsius_text(temperature, rounding);
}

std::string oven_text(const PlannedOvenStep& planned, const KitchenView& view) {
  const OvenStep& step = planned.step;
  std::string out = degrees(step.oven, Rounding::half_up, view);
  if (step.time) {
    out += step.until || planned.estimate ? " for about " : " for ";
    out += duration_text(step.time->in(units::minute), Rounding::half_up);
    if (planned.estimate) out += " (an estimate from the tested roast, by thickness)";
  }
  if (step.until) out += ", until " + degrees(*step.until, Rounding::up, view) + " inside";
  return out;
}

/// `garlic: 3 lb on hand, for herb paste and roast lamb`.
Cell on_hand_cell(const OnHand& on_hand, const Recipe& recipe, const KitchenView& view) {
  std::string text = on_hand.name + ": " + view.measure(on_hand.amount).text + " on hand";
  const std::vector<std::string>& takers = on_hand.takers;
  if (takers.size() == 1 && takers.front() == recipe.name) return words(text);
  for (std::size_t i = 0; i < takers.size(); ++i) {
    const bool last = i + 1 == takers.size();
    text += (i == 0 ? ", for " : last ? " and " : ", ") + takers[i];
  }
  return words(text);
}

}  // namespace

std::string pieces_text(const TestedPieces& tested, const Rational& pieces) {
  const bool quarters = half_up(pieces, fraction(1, 4)) == pieces;
  const std::string count = quarters ? as_mixed(pieces) : as_short_decimal(pieces, 2);
  return count + " " + (pieces > 1 ? several(tested.piece) : tested.piece);
}

Cell makes_cell(const ScaledRecipe& scaled, const KitchenView& view) {
  const Recipe& recipe = *scaled.recipe;
  const ScalePlan& plan = scaled.plan;
  if (plan.portions) {
    const Rational whole = down_to(*plan.portions, 1);
    std::string text = as_decimal(whole, 0) + (whole == 1 ? " portion" : " portions");
    const auto& portion = plan.portion ? plan.portion : recipe.makes.portion;
    if (portion) text += " of " + view.measure(*portion).text;
    return figure_as(text, *plan.portions, as_short_decimal(*plan.portions, 3), "portions");
  }
  if (!recipe.makes.amount) return {};
  return view.measure(platewright::scaled(*recipe.makes.amount, plan.factor));
}

Cell pieces_cell(const ScaledRecipe& scaled, const KitchenView& view) {
  const ScalePlan& plan = scaled.plan;
  if (!plan.pieces) return {};
  std::string text = pieces_text(*scaled.recipe->tested, *plan.pieces) + " of " +
                     view.weight(*plan.piece_weight, Rounding::half_up).text;
  if (plan.rounded_up) text += " (whole pieces)";
  return figure_as(text, *plan.pieces, as_short_decimal(*plan.pieces, 3),
                   scaled.recipe->tested->piece);
}

Cell vessels_cell(const ScaledRecipe& scaled, const KitchenView& view) {
  const ScalePlan& plan = scaled.plan;
  if (!plan.vessels) return {};
  std::string text = as_mixed(plan.vessels->count) + " \u00D7 " + plan.vessel->name + " (" +
                     parts_text(scaled, *plan.vessels, view) + ")";
  return figure_as(text, plan.vessels->count, as_mixed(plan.vessels->count), plan.vessel->name);
}

Cell batches_cell(const ScaledRecipe& scaled, const KitchenView& view) {
  const auto& largest = scaled.recipe->largest_batch;
  if (!largest) return {};
  const Filling& batches = scaled.plan.batches;
  const std::string count = as_mixed(batches.count);
  std::string text = count + " of at most \u00D7 " + as_short_decimal(*largest, 4);
  if (batches.count > 1) text += " (" + parts_text(scaled, batches, view) + ")";
  return figure_as(text, batches.count, count, "");
}

Cell factor_cell(const Rational& factor) {
  const std::string shown = as_short_decimal(factor, 4);
  return figure_as("\u00D7 " + shown, factor, shown, "");
}

std::optional<Box> overflow_box(const ScaledRecipe& scaled, const Book& book,
                                const KitchenView& view) {
  const auto overflow = overflow_of(scaled, book.recipes);
  if (!overflow) return std::nullopt;
  Box box{"vessels", "THE VESSELS ARE TOO SMALL", {}};
  const ScalePlan& plan = scaled.plan;
  const char* where = !overflow->covers         ? "."
                      : overflow->less_the_meat ? " around the meat."
                                                : ", before any meat is in.";
  box.lines.push_back((overflow->covers ? "What covers comes to " : "There would be ") +
                      view.capacity(overflow->liquid) + " in the fullest; the room in one " +
                      plan.vessel->name + " is " + view.capacity(overflow->room) + where);
  box.lines.push_back("Take more or larger vessels, or say under \"pan\" what one holds.");
  return box;
}

Facts size_facts(const ScaledRecipe& scaled, const KitchenView& view) {
  const ScalePlan& plan = scaled.plan;
  Facts facts{"size", "", {}, ColumnKind::words};
  if (Cell makes = makes_cell(scaled, view); !makes.text.empty()) {
    facts.add(plan.portions ? "portions" : "makes", "Makes", std::move(makes));
  }
  if (Cell pieces = pieces_cell(scaled, view); !pieces.text.empty()) {
    facts.add("pieces", "Roast", std::move(pieces));
  }
  if (Cell vessels = vessels_cell(scaled, view); !vessels.text.empty()) {
    facts.add("pans", "In", std::move(vessels));
  }
  if (Cell batches = batches_cell(scaled, view); !batches.text.empty()) {
    facts.add("batches", "Batches", std::move(batches));
  }
  Cell factor = factor_cell(plan.factor);
  if (plan.asked != plan.factor) {
    factor.text += "  (asked for: \u00D7 " + as_short_decimal(plan.asked, 4) + ")";
  }
  facts.add("factor", "Factor", std::move(factor));
  if (plan.on_hand) {
    facts.add("decided_by", "Decided by", on_hand_cell(*plan.on_hand, *scaled.recipe, view));
  }
  facts.add("measures", "Measures", words(view.described()));
  return facts;
}

void add_cost(Facts& facts, const ScaledRecipe& scaled, const Book& book) {
  const PlateCost cost = plate_cost(scaled, book.recipes, book.prices);
  const PriceList& prices = book.prices;
  facts.add("cost", "Food cost", money_cell(plain(cost.total), prices.currency));
  if (!cost.per_portion) return;
  facts.add("portion_cost", "A portion", money_cell(plain(*cost.per_portion), prices.currency));
}

Facts oven_facts(const ScaledRecipe& scaled, const KitchenView& view) {
  Facts out{"oven", "Oven", {}, ColumnKind::words};
  const auto plan = oven_plan(*scaled.recipe, scaled.plan);
  for (const PlannedOvenStep& planned : plan) {
    const char* label = plan.size() == 1 ? "At" : out.facts.empty() ? "First" : "Then";
    out.add("step_" + std::to_string(out.facts.size() + 1), label, words(oven_text(planned, view)));
  }
  if (scaled.recipe->rest) {
    out.add("rest", "Rest",
            words(duration_text(scaled.recipe->rest->in(units::minute), Rounding::up)));
  }
  return out;
}

}  // namespace platewright::card
