// SPDX-License-Identifier: MIT
#include "card/sheets/recipe_card_parts.hpp"

#include "card/sheets/recipe_card_size.hpp"
#include "platewright/card/number_text.hpp"
#include "platewright/costing/bought_line.hpp"
#include "platewright/kitchen/measure.hpp"

namespace platewright::card {
namespace {

bool is_weight(const LineAmount& amount) {
  return amount.low() && amount.low()->dimension() == UnitDimension::mass;
}

/// Whole pieces instead of a weight, for the line that the tested pieces are: `4 legs`.
Cell piece_count(const ScaledRecipe& scaled) {
  const Rational& pieces = *scaled.plan.pieces;
  const TestedPieces& tested = *scaled.recipe->tested;
  return figure_as(pieces_text(tested, pieces), pieces, as_short_decimal(pieces, 3), tested.piece);
}

/// `2 % of water and lamb leg`.
std::string share_text(const WeightShare& share) {
  std::string out = percent_text(share.share, 2) + " of ";
  for (std::size_t i = 0; i < share.of.size(); ++i) {
    out += (i == 0 ? "" : " and ") + share.of[i];
  }
  return out;
}

bool is_egg(const std::string& name) {
  return name == "egg" || name == "eggs" || name.find("whole egg") != std::string::npos;
}

/// Of a part of a whole thing (an egg, a can): the next whole number and what it does, and how to
/// take the exact amount where its weight is known. Nothing where the whole number is within the
/// usual tolerance.
std::string whole_number_text(const ScaledLine& line, const IngredientWeights& weights,
                              const KitchenView& view) {
  const LineAmount& amount = first_amount(line);
  if (!amount.low() || amount.high() || amount.low()->dimension() != UnitDimension::pieces)
    return {};
  const Rational& exact = amount.low()->number;
  const Rational whole = up_to(exact, 1);
  const Rational more = exact > 0 ? whole / exact - 1 : Rational(0);
  if (more <= kitchen_tolerance()) return {};
  std::string out = "; exactly " + as_short_decimal(exact, 2);
  if (const Cell weight = view.weight_of(amount, weights); !weight.text.empty()) {
    out += is_egg(line.line->name) ? ": beat " + as_mixed(whole) + " and weigh out " + weight.text
                                   : ": weigh out " + weight.text;
  }
  if (half_up(exact, exact < 3 ? fraction(1, 2) : Rational(1)) == whole) return out;
  return out + "; " + as_mixed(whole) + " whole are " + signed_percent_text(more);
}

std::string described(const ScaledLine& line, const KitchenView& view) {
  std::string out = line_name(*line.line);
  if (line.line->scale == ScalingRule::held_back) {
    out += " - at first; then to taste, up to " + view.measure(line.amount).text + " in all";
  }
  return out;
}

const IngredientWeights& weights_for(const ScaledLine& line) {
  static const IngredientWeights none;
  return line.ingredient == nullptr ? none : weights_of(*line.ingredient, line.line->preparation);
}

/// The line that the roasts themselves are.
bool is_roast(const ScaledRecipe& scaled, const ScaledLine& line, const Book& book) {
  return line.ingredient != nullptr && line.ingredient->is_cut && scaled.plan.pieces &&
         line.line == piece_line(*scaled.recipe, book.recipes);
}

}  // namespace

Cell amount_to_take(const ScaledRecipe& scaled, const ScaledLine& line, const Book& book,
                    const KitchenView& view) {
  return is_roast(scaled, line, book) ? piece_count(scaled) : view.measure(first_amount(line));
}

Cell described_cell(Sheet& sheet, const ScaledRecipe& scaled, const ScaledLine& line,
                    const Book& book, const KitchenView& view) {
  std::string text = described(line, view);
  if (!is_roast(scaled, line, book)) {
    text += whole_number_text(line, weights_for(line), view);
  }
  text += cover_remark(scaled, *line.line);
  if (scaled.plan.factor == 1) return words(text);
  return cited(sheet, words(text), std::string(source_of(line.line->scale)));
}

Cell weight_as_purchased(const ScaledLine& line, const KitchenView& view) {
  if (line.ingredient == nullptr) return {};
  const Ingredient& ingredient = *line.ingredient;
  const auto used = amount_to_buy(line.amount);
  const Rational yield = yield_to(ingredient, stage_of(*line.line, ingredient));
  if (!used || (yield == 1 && !ingredient.is_cut)) return {};
  try {
    const IngredientWeights& weights = weights_of(ingredient, line.line->preparation);
    return view.weight(weight_of(*used, weights) / yield, Rounding::up);
  } catch (const Failure&) {
    return {};
  }
}

std::string line_name(const RecipeLine& line) {
  std::string out = line.name;
  if (!line.preparation.empty()) out += ", " + line.preparation;
  if (line.stage && *line.stage != Stage::trimmed) {
    out += " (" + std::string(name_of(*line.stage)) + ")";
  }
  if (const WeightShare* share = line.amount.share()) out += " (" + share_text(*share) + ")";
  return out;
}

std::string cover_remark(const ScaledRecipe& scaled, const RecipeLine& line) {
  if (line.scale != ScalingRule::by_cover || !scaled.plan.cover_by_factor) return {};
  return " (by the factor: no weight by volume of the meat is known)";
}

const LineAmount& first_amount(const ScaledLine& line) {
  return line.line->scale == ScalingRule::held_back ? line.start : line.amount;
}

Cell amount_beside(const ScaledLine& line, const KitchenView& beside) {
  const LineAmount& amount = first_amount(line);
  if (!amount.low()) return {};
  const UnitDimension dimension = amount.low()->dimension();
  const bool measured = dimension == UnitDimension::volume || dimension == UnitDimension::length;
  return measured ? beside.measure(amount) : beside.weight_of(amount, weights_for(line));
}

Row large_ingredient_row(Sheet& sheet, const ScaledRecipe& scaled, const ScaledLine& line,
                         const Book& book, const KitchenView& view) {
  const bool weighed = is_weight(first_amount(line)) && !is_roast(scaled, line, book);
  return {view.weight_of(first_amount(line), weights_for(line)),
          weighed ? Cell{} : amount_to_take(scaled, line, book, view),
          described_cell(sheet, scaled, line, book, view)};
}

Row ingredient_row(Sheet& sheet, const ScaledRecipe& scaled, const ScaledLine& line,
                   const Book& book, const CardViews& views) {
  const LineAmount& amount = first_amount(line);
  const IngredientWeights& weights = weights_for(line);
  Row row;
  row.push_back(views.main.weight_of(amount, weights));
  if (views.beside) row.push_back(amount_beside(line, *views.beside));
  const bool weighed = is_weight(amount) && !is_roast(scaled, line, book);
  row.push_back(weighed ? Cell{} : amount_to_take(scaled, line, book, views.main));
  row.push_back(weight_as_purchased(line, views.main));
  row.push_back(described_cell(sheet, scaled, line, book, views.main));
  return row;
}

std::optional<Bars> meat_weights(Sheet& sheet, const ScaledRecipe& scaled,
                                 const KitchenView& view) {
  for (const ScaledLine& line : scaled.lines) {
    const Ingredient* ingredient = line.ingredient;
    const auto used = amount_to_buy(line.amount);
    if (ingredient == nullptr || !ingredient->is_cut || !used) continue;
    const Rational yield = yield_to(*ingredient, stage_of(*line.line, *ingredient));
    const Mass purchased = weight_of(*used, ingredient->weights) / yield;
    Bars bars{"weights", line.line->name + ": " + ingredient->yield_name, {}};
    for (const LadderStep& step : ingredient->ladder.walk(purchased)) {
      const std::string stage(name_of(step.stage));
      bars.bars.push_back(
          {stage, stage, step.share, view.weight(step.mass, Rounding::half_up),
           figure_as(percent_text(step.share), step.share, as_short_decimal(step.share, 4), "")});
    }
    for (const Rung& rung : ingredient->ladder.rungs()) {
      if (rung.source.text.empty()) continue;
      cite(sheet, "Yield " + words_for(rung) + ": " + rung.source.text +
                      (rung.source.row.empty() ? "" : ", " + rung.source.row));
    }
    return bars;
  }
  return std::nullopt;
}

}  // namespace platewright::card
