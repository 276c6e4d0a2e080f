// SPDX-License-Identifier: MIT
#include "platewright/card/batch_card.hpp"

#include <functional>

#include "card/sheets/recipe_card_method.hpp"
#include "card/sheets/recipe_card_parts.hpp"
#include "card/sheets/recipe_card_size.hpp"
#include "card/sheets/safety_boxes.hpp"

namespace platewright {
namespace {

using CellOf = std::function<Cell(const ScaledRecipe&)>;

/// A row with one cell for each size; left out where no size has anything to say.
void add_row(Table& table, Cell label, const std::vector<ScaledRecipe>& sizes,
             const CellOf& cell_of) {
  Row row{std::move(label)};
  bool empty = true;
  for (const ScaledRecipe& size : sizes) {
    row.push_back(cell_of(size));
    empty = empty && row.back().text.empty();
  }
  if (!empty) table.add(std::move(row));
}

/// The line's amount at each size; of one that is held back, what goes in at first and the most.
void add_line(Sheet& sheet, Table& table, const std::vector<ScaledRecipe>& sizes, std::size_t index,
              const Book& book, const KitchenView& view) {
  const RecipeLine& line = *sizes.front().lines[index].line;
  const bool held_back = line.scale == ScalingRule::held_back;
  const std::string name = card::line_name(line) + card::cover_remark(sizes.front(), line);
  const std::string source(source_of(line.scale));
  add_row(table, cited(sheet, words(held_back ? name + ", at first" : name), source), sizes,
          [&](const ScaledRecipe& size) {
            return card::amount_to_take(size, size.lines[index], book, view);
          });
  if (!held_back) return;
  add_row(table, words(name + ", to taste up to"), sizes,
          [&](const ScaledRecipe& size) { return view.measure(size.lines[index].amount); });
}

Table batch_table(Sheet& sheet, const std::vector<ScaledRecipe>& sizes, const Book& book,
                  const card::CardViews& views) {
  Table table;
  table.key = "batches";
  table.columns.push_back(words_column("ingredient", ""));
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    table.columns.push_back(words_column("batch_" + std::to_string(i + 1),
                                         card::factor_cell(sizes[i].plan.factor).text));
  }
  if (sizes.empty()) return table;
  add_row(table, words("Makes"), sizes,
          [&](const ScaledRecipe& size) { return card::makes_cell(size, views.main); });
  add_row(table, words("Roast"), sizes,
          [&](const ScaledRecipe& size) { return card::pieces_cell(size, views.main); });
  add_row(table, words("In"), sizes,
          [&](const ScaledRecipe& size) { return card::vessels_cell(size, views.main); });
  add_row(table, words("Batches"), sizes,
          [&](const ScaledRecipe& size) { return card::batches_cell(size, views.main); });
  std::string part;
  table.open_group("Ingredients");
  for (std::size_t i = 0; i < sizes.front().lines.size(); ++i) {
    const RecipeLine& line = *sizes.front().lines[i].line;
    if (line.part != part) table.open_group(line.part);
    part = line.part;
    add_line(sheet, table, sizes, i, book, views.main);
  }
  return table;
}

}  // namespace

Sheet batch_card(const std::vector<ScaledRecipe>& sizes, const Book& book,
                 const CardOptions& options) {
  const card::CardViews views(options, book);
  Sheet sheet(SheetKind::batches);
  sheet.date = options.date;
  if (sizes.empty()) {
    sheet.add(batch_table(sheet, sizes, book, views));
    return sheet;
  }
  const Recipe& recipe = *sizes.front().recipe;
  sheet.title = recipe.name;
  Facts facts{"size", "", {}, ColumnKind::words};
  facts.add("measures", "Measures", words(views.main.described()));
  sheet.add(std::move(facts));
  sheet.add(card::allergen_box(recipe, book));
  sheet.add(batch_table(sheet, sizes, book, views));
  if (Facts oven = card::oven_facts(sizes.front(), views.main); !oven.facts.empty()) {
    sheet.add(std::move(oven));
  }
  for (Box& box : card::safety_boxes(sheet, sizes.front(), book)) sheet.add(std::move(box));
  if (!recipe.steps.empty()) sheet.add(card::method_of_any_size(recipe));
  if (!recipe.notes.empty()) sheet.add(Paragraphs{"notes", "Notes", recipe.notes});
  return sheet;
}

}  // namespace platewright
