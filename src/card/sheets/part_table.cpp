// SPDX-License-Identifier: MIT
#include "card/sheets/part_table.hpp"

#include "card/sheets/recipe_card_size.hpp"
#include "platewright/card/number_text.hpp"
#include "platewright/problem/plural.hpp"

namespace platewright::card {
namespace {

/// Parts are named one by one up to so many.
constexpr int few_parts = 6;

/// `4 legs`, `21 portions`, `6.8 L`.
std::string content_text(const ScaledRecipe& scaled, const Rational& content,
                         const KitchenView& view) {
  const Recipe& recipe = *scaled.recipe;
  if (recipe.tested) return pieces_text(*recipe.tested, content);
  if (const auto whole = filling_volume(recipe)) {
    return view.level(*whole * (content / tested_content(recipe)));
  }
  if (scaled.plan.portions) {
    const Rational portions = *scaled.plan.portions * (content / scaled.plan.batches.content);
    return as_short_decimal(portions, 1, Rounding::down) + " portions";
  }
  return "\u00D7 " + as_short_decimal(content, 4);
}

/// `4 + 3 + 3 legs`.
std::string one_by_one(const ScaledRecipe& scaled, const Filling& filling) {
  std::string out;
  for (const FilledAlike& part : filling.parts) {
    for (Rational i = 0; i < part.times; i += 1) {
      out += (out.empty() ? "" : " + ") + as_short_decimal(part.content, 2);
    }
  }
  return out + " " + several(scaled.recipe->tested->piece);
}

std::string column_title(const ScaledRecipe& scaled, const Filling& filling,
                         const FilledAlike& part, const KitchenView& view) {
  const std::string content = content_text(scaled, part.content, view);
  if (filling.parts.size() == 1) return "In each: " + content;
  return (part.times == 1 ? "In 1: " : "In each of " + as_mixed(part.times) + ": ") + content;
}

LineAmount in_one(const LineAmount& whole, const Rational& share) {
  return scaled(whole, share);
}

/// The line's share of what is measured out for it; whole pieces for the roast itself.
Cell part_amount(const ScaledRecipe& scaled, std::size_t index, PartOf what,
                 const FilledAlike& part, const Book& book, const KitchenView& view) {
  const ScaledLine& line = scaled.lines[index];
  if (scaled.plan.pieces && line.line == piece_line(*scaled.recipe, book.recipes)) {
    return figure_as(pieces_text(*scaled.recipe->tested, part.content), part.content,
                     as_short_decimal(part.content, 3), scaled.recipe->tested->piece);
  }
  const Rational share = share_in_part(scaled, index, what, part, book.recipes);
  return view.measure(in_one(first_amount(line), share));
}

}  // namespace

std::string parts_text(const ScaledRecipe& scaled, const Filling& filling,
                       const KitchenView& view) {
  if (filling.parts.size() == 1) {
    const std::string content = content_text(scaled, filling.fullest().content, view);
    return filling.count == 1 ? content + " in it" : content + " in each";
  }
  if (filling.count <= few_parts) return one_by_one(scaled, filling);
  std::string out;
  for (const FilledAlike& part : filling.parts) {
    out += (out.empty() ? "" : ", ") + content_text(scaled, part.content, view) +
           (part.times == 1 ? " in 1" : " in each of " + as_mixed(part.times));
  }
  return out;
}

std::optional<Table> part_table(const ScaledRecipe& scaled, PartOf what, const Book& book,
                                const KitchenView& view) {
  const Filling* filling = filling_of(scaled.plan, what);
  const bool batches = what == PartOf::batches;
  const bool named = !batches || scaled.recipe->largest_batch.has_value();
  if (filling == nullptr || !named || filling->count <= 1) return std::nullopt;
  Table table;
  table.key = batches ? "each_batch" : "each_vessel";
  table.title = "Into each " + (batches ? "batch" : scaled.plan.vessel->name);
  table.columns.push_back(naming_column("ingredient", "Ingredient"));
  for (const FilledAlike& part : filling->parts) {
    table.columns.push_back(words_column("part_" + std::to_string(table.columns.size()),
                                         column_title(scaled, *filling, part, view)));
  }
  std::string group;
  for (std::size_t i = 0; i < scaled.lines.size(); ++i) {
    const RecipeLine& line = *scaled.lines[i].line;
    if (line.part != group) table.open_group(line.part);
    group = line.part;
    Row row{words(line_name(line))};
    for (const FilledAlike& part : filling->parts) {
      row.push_back(part_amount(scaled, i, what, part, book, view));
    }
    table.add(std::move(row));
  }
  return table;
}

void cite_vessel(Sheet& sheet, const ScaledRecipe& scaled) {
  if (!scaled.plan.vessel) return;
  const RecipeVessel& vessel = *scaled.plan.vessel;
  const auto by = counted_by(*scaled.recipe, vessel);
  if (!by) return;
  const bool volume = *by == CountedBy::volume;
  std::string text =
      vessel.name + ", counted by the " + (volume ? "volume" : "area of the bottom") + ": ";
  text += vessel.source.empty() ? "the size as it is written" : vessel.source;
  if (volume && vessel.fill != 1) {
    text += "; filled to " + percent_text(vessel.fill) + " (common practice, no source)";
  }
  cite(sheet, text);
}

}  // namespace platewright::card
