#pragma once
// The parts of a recipe card that need the book: rows, weights, allergens, temperatures.

#include <optional>
#include <string>
#include <vector>

#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/recipe_card.hpp"

namespace platewright::card {

/// The measures of the card, and the metric ones beside them if asked for.
struct CardViews {
  CardViews(const CardOptions& options, const Book& book)
      : main(options.system, book.tables.units) {
    if (options.metric_too) metric.emplace(MeasuringSystem::metric, book.tables.units);
  }

  KitchenView main;
  std::optional<KitchenView> metric;
};

/// Measure, weight, weight as purchased, name and preparation of one line.
Row ingredient_row(const ScaledRecipe& scaled, const ScaledLine& line, const Book& book,
                   const CardViews& views);

/// What a step takes of a line.
StepLine step_line(const ScaledLine& line, const CardViews& views);

/// The weight of the meat at each rung, from the weight bought to the weight served; nothing for a
/// recipe without a cut.
std::optional<Bars> meat_weights(const ScaledRecipe& scaled, const Book& book,
                                 const KitchenView& view);

/// Allergens with the ingredients that bring them, and what the book does not say.
Box allergen_box(const Recipe& recipe, const Book& book);

/// For each kind of meat the pull temperature beside the authorities' minimums.
std::vector<Box> safety_boxes(Sheet& sheet, const Recipe& recipe, const Book& book);

}  // namespace platewright::card
