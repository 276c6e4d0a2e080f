// SPDX-License-Identifier: MIT
#include <string>

#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

std::string markdown_of(Block block) {
  Sheet sheet(SheetKind::card);
  sheet.title = "Lamb";
  sheet.add(std::move(block));
  const std::string begin = "# Lamb\n\n";
  const std::string text = write_markdown(sheet);
  REQUIRE(text.starts_with(begin));
  return text.substr(begin.size());
}

std::string paragraph(const std::string& text) {
  return markdown_of(Paragraphs{"notes", "", {text}});
}

}  // namespace

TEST_CASE("a table becomes a pipe table") {
  Table table{"t", "Lines", {words_column("item", "Item"), figures_column("w", "Weight")},
              {},  {},      {}};
  table.open_group("Paste");
  table.add({words("garlic | ground"), with_footnote(figure(1, "1", "lb"), 1)});
  table.totals.push_back({words("Total"), figure(1, "1", "lb")});
  CHECK(markdown_of(table) ==
        "### Lines\n\n"
        "| Item | Weight |\n"
        "| --- | ---: |\n"
        "| **Paste** |  |\n"
        "| garlic \\| ground | 1 lb \\[1\\] |\n"
        "| **Total** | **1 lb** |\n");
}

TEST_CASE("a box becomes a block quote") {
  CHECK(markdown_of(Box{"a", "ALLERGENS", {"milk", "mustard"}}) ==
        "> **ALLERGENS**\n>\n> milk\n>\n> mustard\n");
}

TEST_CASE("steps and facts become lists") {
  CHECK(markdown_of(Steps{"s", "", {{"Rub.", words("1 h"), {{words("8 cloves"), "garlic"}}}}}) ==
        "1. Rub. (1 h)\n   - 8 cloves garlic\n");
  CHECK(markdown_of(Steps{"s", "", {{"Rub.", {}, {{words("1 lb"), "salt", words("455 g")}}}}}) ==
        "1. Rub.\n   - 1 lb (455 g) salt\n");
  CHECK(markdown_of(Facts{"f", "", {{"served", "Served", figure(1, "1.5", "lb")}}}) ==
        "- **Served** 1.5 lb\n");
}

TEST_CASE("data can't become markup") {
  CHECK(paragraph("# a") == "\\# a\n");
  CHECK(paragraph("- a") == "\\- a\n");
  CHECK(paragraph("    a") == "a\n");
  CHECK(paragraph("12. a") == "12\\. a\n");
  CHECK(paragraph("1.5 lb, bone-in") == "1.5 lb, bone-in\n");
  CHECK(paragraph("<b> [x](y) *z* `c` $1$") == "\\<b\\> \\[x\\](y) \\*z\\* \\`c\\` \\$1\\$\n");
  CHECK(paragraph("one\n# two") == "one # two\n");
}
