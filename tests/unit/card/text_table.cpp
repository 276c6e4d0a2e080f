// SPDX-License-Identifier: MIT
#include <string>

#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

Table ingredients() {
  Table table;
  table.key = "ingredients";
  table.columns = {words_column("ingredient", "Ingredient"), figures_column("weight", "Weight")};
  return table;
}

/// What stands below the title of a sheet that has this one block.
std::string body_of(Block block, const TextOptions& options) {
  Sheet sheet(SheetKind::card);
  sheet.title = "x";
  sheet.add(std::move(block));
  const std::string text = write_text(sheet, options);
  return "\n" + text.substr(text.find("\n\n") + 2);
}

const TextOptions narrow_ascii{40, true, 0};

}  // namespace

TEST_CASE("figures stand at the right edge of their column") {
  Table table = ingredients();
  table.add({words("garlic"), figure(fraction(27, 2), "13.5", "oz")});
  table.add({words("cre\u0300me fra\u00EEche"), figure(4, "4", "oz")});
  table.add({words("\u6D77\u82D4"), figure(100, "100", "oz")});
  CHECK(body_of(table, narrow_ascii) == R"(
Ingredient       Weight
-------------   -------
garlic          13.5 oz
cre)"
                                        "\u0300me fra\u00EEche      4 oz\n"
                                        "\u6D77\u82D4             100 oz\n");
}

TEST_CASE("columns of words are narrowed and wrapped, figures are not") {
  Table table = ingredients();
  table.columns.push_back(words_column("note", "Note"));
  table.add({words("lamb leg, bone-in"), figure(75, "75", "lb"),
             words("well trimmed, the shank bone sawn off short")});
  CHECK(body_of(table, narrow_ascii) == R"(
Ingredient       Weight  Note
---------------  ------  ---------------
lamb leg,         75 lb  well trimmed,
bone-in                  the shank bone
                         sawn off short
)");
}

TEST_CASE("groups have a sub-heading, totals a rule above them") {
  Table table = ingredients();
  table.open_group("Roast");
  table.add({words("lamb"), figure(75, "75", "lb")});
  table.open_group("Paste");
  table.add({words("garlic"), figure(1, "1", "lb")});
  table.totals.push_back({words("Total"), figure(76, "76", "lb")});
  table.notes = {"weighed raw"};
  CHECK(body_of(table, narrow_ascii) == R"(
  Ingredient   Weight
  ----------   ------
Roast
  lamb          75 lb

Paste
  garlic         1 lb
  ----------   ------
  Total         76 lb

weighed raw
)");
}

TEST_CASE("a table that fits no page is written one value a line") {
  Table table = ingredients();
  table.columns.push_back(figures_column("measure", "Measure"));
  table.columns.push_back(figures_column("price", "Price"));
  table.add({words("olive oil"), figure(3, "3", "lb"),
             figure_as("1 qt + 1/2 cup + 1 tbsp", fraction(73, 16), "4 9/16", "cup"), Cell{}});
  CHECK(body_of(table, narrow_ascii) == R"(
Ingredient: olive oil
  Weight: 3 lb
  Measure: 1 qt + 1/2 cup + 1 tbsp

)");
}

TEST_CASE("the column that names the row comes first where the values stand one a line") {
  Table table;
  table.columns = {figures_column("weight", "Weight"), figures_column("measure", "Measure"),
                   naming_column("ingredient", "Ingredient"), words_column("note", "Note")};
  table.add({figure(3, "3", "lb"), words("3 qt + 1/2 cup + 1 tbsp + 1 tsp"), words("olive oil"),
             words("cold")});
  CHECK(body_of(table, narrow_ascii) == R"(
Ingredient: olive oil
  Weight: 3 lb
  Measure:
    3 qt + 1/2 cup + 1 tbsp + 1 tsp
  Note: cold

)");
}

TEST_CASE("columns stand closer before the values stand one a line") {
  Table table = ingredients();
  table.columns.push_back(figures_column("measure", "Measure"));
  table.add({words("Worcestershire"), figure(3, "3", "lb"), words("3 qt + 1/2 cup + 1 L")});
  CHECK(body_of(table, narrow_ascii) == R"(
Ingredient   Weight              Measure
------------ ------ --------------------
Worcestershi   3 lb 3 qt + 1/2 cup + 1 L
re
)");
}

TEST_CASE("a column of data is not on the page") {
  Table table = ingredients();
  table.columns.insert(table.columns.begin(), data_column("by"));
  table.add({words("2027-10-08"), words("lamb"), figure(75, "75", "lb")});
  table.totals.push_back({words(""), words("Total"), figure(75, "75", "lb")});
  const std::string page = body_of(table, narrow_ascii);
  CHECK(page == R"(
Ingredient   Weight
----------   ------
lamb          75 lb
----------   ------
Total         75 lb
)");
}

TEST_CASE("a footnote's marker does not move the figures above and below it") {
  Sheet sheet(SheetKind::card);
  sheet.title = "x";
  Table table = ingredients();
  table.add({words("a"), cited(sheet, figure(10, "10", "lb"), "a table")});
  table.add({words("b"), figure(75, "75", "lb")});
  sheet.add(table);
  const std::string text = write_text(sheet, narrow_ascii);
  CHECK(text.find("a             10 lb [1]\nb             75 lb\n") != std::string::npos);
  CHECK(text.find("[1] a table\n") != std::string::npos);
}

TEST_CASE("a row with missing cells and a table without rows are printed") {
  Table table = ingredients();
  table.add({words("salt")});
  CHECK(body_of(table, narrow_ascii) == "\nIngredient   Weight\n----------   ------\nsalt\n");
  CHECK(body_of(ingredients(), narrow_ascii) == "\nIngredient   Weight\n----------   ------\n");
}
