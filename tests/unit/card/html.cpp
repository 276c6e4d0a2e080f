// SPDX-License-Identifier: MIT
// The page of HTML: what each block becomes.

#include <string>

#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

Sheet sheet_with(Block block, SheetKind kind = SheetKind::card) {
  Sheet sheet(kind);
  sheet.title = "Lamb";
  sheet.add(std::move(block));
  return sheet;
}

bool has(const std::string& page, const std::string& part) {
  return page.find(part) != std::string::npos;
}

unsigned count(const std::string& page, const std::string& part) {
  unsigned out = 0;
  for (std::size_t i = page.find(part); i != std::string::npos; i = page.find(part, i + 1)) ++out;
  return out;
}

Table lines_table(unsigned rows) {
  Table table{"t", "Lines", {naming_column("item", "Item"), figures_column("w", "Weight")},
              {},  {},      {}};
  table.open_group("Paste");
  for (unsigned i = 0; i < rows; ++i) {
    table.add({words("garlic"), with_footnote(figure(1, "1", "lb"), 1)});
  }
  table.totals.push_back({words("Total"), figure(1, "1", "lb")});
  return table;
}

}  // namespace

TEST_CASE("a page says its language, its characters and its title, and loads nothing") {
  const std::string page = write_html(sheet_with(Paragraphs{"notes", "", {"a"}}));
  CHECK(
      page.starts_with("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"));
  CHECK(has(page, "default-src 'none'") == false);
  CHECK(has(page, "content=\"default-src &#39;none&#39;; style-src &#39;unsafe-inline&#39;\""));
  CHECK(has(page, "<title>Lamb</title>"));
  CHECK(has(page, "<h1>Lamb</h1>"));
  for (const char* part : {"<script", "src=", "url(", "@import", "<link", "http"}) {
    INFO(part);
    CHECK(count(page, part) == (std::string(part) == "http" ? 1U : 0U));  // http-equiv
  }
}

TEST_CASE("a table has a caption, its headings their scope, and a source is a link") {
  Sheet sheet = sheet_with(lines_table(1));
  sheet.footnotes = {"SR28"};
  const std::string page = write_html(sheet);
  CHECK(has(page, "<caption><h2>Lines</h2></caption>"));
  CHECK(has(page, "<th class=\"words brief\" scope=\"col\">Item</th>"));
  CHECK(has(page, "<th scope=\"rowgroup\" colspan=\"2\">Paste</th>"));
  CHECK(has(page, "<th class=\"words brief\" scope=\"row\">garlic</th>"));
  CHECK(has(page, "<td class=\"figures\">1 lb<sup><a href=\"#source-1\">[1]</a></sup></td>"));
  CHECK(has(page, "<tbody class=\"totals\">"));
  CHECK(has(page, "<li id=\"source-1\">SR28</li>"));
}

TEST_CASE("a long table bears its title on every page of paper") {
  CHECK(count(write_html(sheet_with(lines_table(2))), "class=\"again\"") == 0);
  CHECK(count(write_html(sheet_with(lines_table(20))), "class=\"again\"") == 1);
}

TEST_CASE("what is data for programs is not on the page") {
  Table table{"t", "", {words_column("item", "Item"), data_column("at")}, {}, {}, {}};
  table.add({words("garlic"), words("2027-10-09T18:30")});
  CHECK_FALSE(has(write_html(sheet_with(table)), "T18:30"));
}

TEST_CASE("facts, steps, bars, boxes and signatures have elements of their own") {
  CHECK(has(write_html(sheet_with(Facts{"f", "", {{"served", "Served", figure(1, "1", "lb")}}})),
            "<tr><th scope=\"row\">Served</th><td class=\"figures\">1 lb</td></tr>"));
  const std::string steps = write_html(sheet_with(
      Steps{"s", "", {{"Rub.", words("1 h"), {{words("1 lb"), "salt", words("455 g")}}}}}));
  CHECK(has(steps, "<p>Rub. <span class=\"takes\">(1 h)</span></p>"));
  CHECK(has(steps, "<td class=\"figures\">1 lb</td><td class=\"figures\">455 g</td>"));
  const std::string bars = write_html(sheet_with(Bars{
      "b", "", {{"a", "all", 1, words("2 lb")}, {"h", "half", fraction(1, 2), words("1 lb")}}}));
  CHECK(has(bars, "<rect class=\"fill\" width=\"100\" height=\"10\"/>"));
  CHECK(has(bars, "<rect class=\"fill\" width=\"50\" height=\"10\"/>"));
  CHECK(has(write_html(sheet_with(Box{"a", "ALLERGENS", {"milk"}})),
            "<section class=\"box\">\n<h2>ALLERGENS</h2>\n<p>milk</p>\n</section>"));
  CHECK(has(write_html(sheet_with(Signatures{"s", {"The caterer"}})),
            "<section class=\"signatures\">\n<p>The caterer</p>\n</section>"));
}

TEST_CASE("labels stand two in a row, to be cut out") {
  Sheet sheet(SheetKind::labels);
  for (const char* food : {"stock", "lamb", "roots"}) sheet.add(Box{"label", food, {}});
  const std::string page = write_html(sheet);
  CHECK(count(page, "<div class=\"cut-row\">") == 2);
  CHECK(count(page, "<section class=\"label\">") == 3);
}

TEST_CASE("the headings in a part are smaller than the part's own") {
  Sheet sheet(SheetKind::cards);
  sheet.add(Part{"one", "roast lamb"});
  sheet.add(Box{"a", "ALLERGENS", {"milk"}});
  const std::string page = write_html(sheet);
  CHECK(has(page, "<article class=\"part\">\n<h2>roast lamb</h2>\n"));
  CHECK(has(page, "<h3>ALLERGENS</h3>"));
}

TEST_CASE("a name is text, whatever stands in it") {
  const std::string page = write_html(
      sheet_with(Paragraphs{"notes", "</style><script>x</script>", {"a & b \"c\" 'd'"}}));
  CHECK(has(page, "&lt;/style&gt;&lt;script&gt;x&lt;/script&gt;"));
  CHECK(has(page, "a &amp; b &quot;c&quot; &#39;d&#39;"));
  CHECK_FALSE(has(page, "<script"));
  CHECK(has(write_html(sheet_with(Paragraphs{"notes", "", {"a\uFFFE\uFFFFb"}})),
            "<p>a\uFFFD\uFFFDb"));
}

TEST_CASE("a number keeps its percent sign and its degrees") {
  const std::string page = write_html(sheet_with(Paragraphs{"n", "", {"62.5 % at 130 \u00B0F %"}}));
  CHECK(has(page, "62.5&#160;% at 130&#160;\u00B0F&#160;%"));
}
