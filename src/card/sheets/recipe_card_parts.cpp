#include "card/sheets/recipe_card_parts.hpp"

#include <algorithm>

#include "platewright/card/number_text.hpp"
#include "platewright/costing/bought_line.hpp"
#include "platewright/recipe/recipe_allergens.hpp"
#include "platewright/safety/pull_temperature.hpp"

namespace platewright::card {
namespace {

bool is_weight(const LineAmount& amount) {
  return amount.low && amount.low->dimension() == UnitDimension::mass;
}

/// What to measure out: of a line that is held back, the share that goes in at first.
const LineAmount& first_amount(const ScaledLine& line) {
  return line.line->scale == ScalingRule::held_back ? line.start : line.amount;
}

/// The weight at the line's stage as purchased; empty where nothing is lost or it can't be weighed.
Cell as_bought(const ScaledLine& line, const Ingredient& ingredient, const KitchenView& view) {
  const auto used = amount_to_buy(line.amount);
  const Rational yield = yield_to(ingredient, stage_of(*line.line, ingredient));
  if (!used || (yield == 1 && !ingredient.is_cut)) return {};
  try {
    const IngredientWeights& weights = weights_of(ingredient, line.line->preparation);
    return view.weight(weight_of(*used, weights) / yield);
  } catch (const Failure&) {
    return {};
  }
}

/// Whole pieces instead of a weight, for the line that the tested pieces are: `4 legs`.
Cell piece_count(const ScaledRecipe& scaled) {
  const Rational& pieces = *scaled.plan.pieces;
  const Rational shown = half_up(pieces, fraction(1, 4));
  const std::string& word = scaled.recipe->tested->piece;
  return figure_as(as_mixed(shown) + " " + word + (shown > 1 ? "s" : ""), pieces,
                   as_short_decimal(pieces, 3), word);
}

std::string described(const ScaledLine& line, const KitchenView& view) {
  std::string out = line.line->name;
  if (!line.line->preparation.empty()) out += ", " + line.line->preparation;
  if (line.line->stage && *line.line->stage != Stage::trimmed) {
    out += " (" + std::string(name_of(*line.line->stage)) + ")";
  }
  if (line.line->scale == ScalingRule::held_back) {
    out += " - at first; then to taste, up to " + view.measure(line.amount).text + " in all";
  }
  return out;
}

std::string signed_step(const TemperatureStep& step) {
  return as_short_decimal(step.in(units::fahrenheit_step), 1) + " \u00B0F";
}

std::string hold_text(const RoastHold& hold) {
  return duration_text(hold.hold.in(units::minute)) + " at " + fahrenheit_text(hold.at) +
         " or more (" + hold.authority + ", " + hold.row + ")";
}

std::string minimum_text(const MinimumTemperature& minimum) {
  std::string out = minimum.authority + " (" + minimum.audience + "): " + fahrenheit_text(minimum.at);
  if (minimum.rest && *minimum.rest > Duration()) {
    out += ", then rest " + duration_text(minimum.rest->in(units::minute));
  }
  if (minimum.hold && *minimum.hold > Duration()) {
    out += " for " + duration_text(minimum.hold->in(units::minute));
  }
  return minimum.row.empty() ? out : out + " [" + minimum.row + "]";
}

void add_advisory(const PullCheck& check, Box& box) {
  switch (check.advisory) {
    case Advisory::no_minimum:
    case Advisory::not_needed:
      break;
    case Advisory::unless_held:
      box.lines.push_back("BELOW THE MINIMUM: hold the roast for " + hold_text(*check.hold) +
                          ", or tell guests in writing that it is undercooked (Food Code 3-603.11).");
      break;
    case Advisory::needed:
      box.lines.push_back(
          "BELOW THE MINIMUM: tell guests in writing that it is undercooked and that raw or "
          "undercooked meat raises the risk of illness (Food Code 3-603.11).");
      break;
  }
}

/// The kinds of food in the recipe's own lines that have a minimum temperature.
std::vector<std::string> safety_keys(const Recipe& recipe, const Book& book) {
  std::vector<std::string> out;
  for (const RecipeLine& line : recipe.lines) {
    const Ingredient* ingredient = line.is_recipe ? nullptr : book.recipes.find_ingredient(line.name);
    if (ingredient == nullptr || ingredient->safety.empty()) continue;
    if (std::find(out.begin(), out.end(), ingredient->safety) == out.end()) {
      out.push_back(ingredient->safety);
    }
  }
  return out;
}

}  // namespace

Row ingredient_row(const ScaledRecipe& scaled, const ScaledLine& line, const Book& book,
                   const CardViews& views) {
  const LineAmount& amount = first_amount(line);
  const Ingredient* ingredient =
      line.line->is_recipe ? nullptr : book.recipes.find_ingredient(line.line->name);
  const IngredientWeights none{line.line->name, {}};
  const IngredientWeights& weights =
      ingredient == nullptr ? none : weights_of(*ingredient, line.line->preparation);
  const bool is_pieces = ingredient != nullptr && ingredient->is_cut && scaled.plan.pieces &&
                         line.line == piece_line(*scaled.recipe, book.recipes);
  Row row;
  row.push_back(views.main.weight_of(amount, weights));
  if (views.metric) {
    const bool volume = amount.low && amount.low->dimension() == UnitDimension::volume;
    row.push_back(volume ? views.metric->measure(amount) : views.metric->weight_of(amount, weights));
  }
  if (is_pieces) {
    row.push_back(piece_count(scaled));
  } else {
    row.push_back(is_weight(amount) ? Cell{} : views.main.measure(amount));
  }
  row.push_back(ingredient == nullptr ? Cell{} : as_bought(line, *ingredient, views.main));
  row.push_back(words(described(line, views.main)));
  return row;
}

StepLine step_line(const ScaledLine& line, const CardViews& views) {
  std::string name = line.line->name;
  if (!line.line->preparation.empty()) name += ", " + line.line->preparation;
  return {views.main.measure(first_amount(line)), name};
}

std::optional<Bars> meat_weights(const ScaledRecipe& scaled, const Book& book,
                                 const KitchenView& view) {
  for (const ScaledLine& line : scaled.lines) {
    const Ingredient* ingredient =
        line.line->is_recipe ? nullptr : book.recipes.find_ingredient(line.line->name);
    const auto used = amount_to_buy(line.amount);
    if (ingredient == nullptr || !ingredient->is_cut || !used) continue;
    const Rational yield = yield_to(*ingredient, stage_of(*line.line, *ingredient));
    const Mass purchased = weight_of(*used, ingredient->weights) / yield;
    Bars bars{"weights", line.line->name + ": " + ingredient->yield_name, {}};
    for (const LadderStep& step : ingredient->ladder.walk(purchased)) {
      const std::string stage(name_of(step.stage));
      bars.bars.push_back({stage, stage, step.share, view.weight(step.mass),
                           figure_as(percent_text(step.share), step.share,
                                     as_short_decimal(step.share, 4), "")});
    }
    return bars;
  }
  return std::nullopt;
}

Box allergen_box(const Recipe& recipe, const Book& book) {
  const RecipeAllergens allergens = allergens_of(recipe, book.recipes, book.tables.allergens);
  Box box{"allergens", "ALLERGENS", {}};
  for (const AllergenFound& found : allergens.found) {
    std::string line = found.key + ":";
    for (std::size_t i = 0; i < found.ingredients.size(); ++i) {
      line += (i == 0 ? " " : ", ") + found.ingredients[i];
    }
    box.lines.push_back(line);
  }
  if (!allergens.not_stated.empty()) {
    std::string line = "NOT KNOWN for:";
    for (std::size_t i = 0; i < allergens.not_stated.size(); ++i) {
      line += (i == 0 ? " " : ", ") + allergens.not_stated[i];
    }
    box.lines.push_back(line + ". Ask before serving.");
  }
  if (allergens.found.empty() && allergens.not_stated.empty()) {
    box.lines.push_back("None stated by the book for any ingredient.");
  }
  box.lines.push_back("From the book's own statements; check every label. Traces are not covered.");
  return box;
}

std::vector<Box> safety_boxes(Sheet& sheet, const Recipe& recipe, const Book& book) {
  std::vector<Box> out;
  const auto pull = pull_temperature(recipe);
  for (const std::string& key : safety_keys(recipe, book)) {
    const auto minimums = book.tables.safety.minimums_for(key);
    if (minimums.empty()) continue;
    Box box{"temperature_" + std::to_string(out.size() + 1), "TEMPERATURE: " + key, {}};
    if (pull) {
      const PullCheck check = check_pull_temperature(key, *pull, recipe.rest, book.tables.safety);
      box.lines.push_back("Pull at " + fahrenheit_text(*pull) + " inside, in the thickest part.");
      for (const MinimumCheck& minimum : check.checks) {
        box.lines.push_back(minimum_text(minimum.minimum) +
                            (minimum.reached ? ": reached" : ": short by " + signed_step(minimum.short_by)));
      }
      add_advisory(check, box);
    } else {
      for (const MinimumTemperature& minimum : minimums) box.lines.push_back(minimum_text(minimum));
    }
    box.lines.push_back("Cook to temperature, not to time. Local codes and your inspector come first.");
    for (const MinimumTemperature& minimum : minimums) cite(sheet, minimum.source);
    out.push_back(std::move(box));
  }
  return out;
}

}  // namespace platewright::card
