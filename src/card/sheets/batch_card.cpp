#include "platewright/card/batch_card.hpp"

#include <functional>

#include "card/sheets/recipe_card_parts.hpp"
#include "card/sheets/recipe_card_size.hpp"

namespace platewright {
namespace {

using CellOf = std::function<Cell(const ScaledRecipe&)>;

/// A row with one cell for each size; left out where no size has anything to say.
void add_row(Table& table, const std::string& label, const std::vector<ScaledRecipe>& sizes,
             const CellOf& cell_of) {
  Row row{words(label)};
  bool empty = true;
  for (const ScaledRecipe& size : sizes) {
    row.push_back(cell_of(size));
    empty = empty && row.back().text.empty();
  }
  if (!empty) table.add(std::move(row));
}

Table batch_table(const std::vector<ScaledRecipe>& sizes, const Book& book,
                  const card::CardViews& views) {
  Table table;
  table.key = "batches";
  table.columns.push_back(words_column("ingredient", ""));
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    table.columns.push_back(words_column("batch_" + std::to_string(i + 1),
                                         card::factor_cell(sizes[i].plan.factor).text));
  }
  if (sizes.empty()) return table;
  add_row(table, "Makes", sizes,
          [&](const ScaledRecipe& size) { return card::makes_cell(size, views.main); });
  add_row(table, "Roast", sizes,
          [&](const ScaledRecipe& size) { return card::pieces_cell(size, views.main); });
  add_row(table, "In", sizes, card::vessels_cell);
  std::string part;
  table.open_group("Ingredients");
  for (std::size_t i = 0; i < sizes.front().lines.size(); ++i) {
    const RecipeLine& line = *sizes.front().lines[i].line;
    if (line.part != part) table.open_group(line.part);
    part = line.part;
    std::string name = line.name;
    if (!line.preparation.empty()) name += ", " + line.preparation;
    add_row(table, name, sizes, [&](const ScaledRecipe& size) {
      return card::amount_to_take(size, size.lines[i], book, views.main);
    });
  }
  return table;
}

}  // namespace

Sheet batch_card(const std::vector<ScaledRecipe>& sizes, const Book& book,
                 const CardOptions& options) {
  const card::CardViews views(options, book);
  Sheet sheet;
  sheet.kind = "batches";
  sheet.date = options.date;
  if (!sizes.empty()) {
    sheet.title = sizes.front().recipe->name;
    sheet.add(card::allergen_box(*sizes.front().recipe, book));
  }
  sheet.add(batch_table(sizes, book, views));
  return sheet;
}

}  // namespace platewright
