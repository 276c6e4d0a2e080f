// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <string>

#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;
using nlohmann::json;

namespace {

json json_of(Block block) {
  Sheet sheet(SheetKind::cost);
  sheet.title = "Lamb";
  sheet.add(std::move(block));
  return json::parse(write_json(sheet))["arrays"];
}

/// The value of a fact.
json fact(const json& facts, const std::string& key) {
  for (const json& row : facts) {
    if (row["key"] == key) return row["value"];
  }
  throw std::runtime_error("no fact " + key);
}

}  // namespace

TEST_CASE("the top of a sheet") {
  Sheet sheet(SheetKind::cost);
  sheet.title = "Lamb";
  sheet.date = "9 October 2027";
  sheet.subtitles = {"for 84"};
  sheet.footnotes = {"a table"};
  CHECK(write_json(sheet) == R"({
  "version": 1,
  "sheet": "cost",
  "title": "Lamb",
  "date": "9 October 2027",
  "subtitles": [
    "for 84"
  ],
  "arrays": {},
  "titles": {},
  "sources": [
    "a table"
  ]
}
)");
}

TEST_CASE("a figure is exact beside the rounded number, both as strings") {
  Facts facts{"yield", "Yield", {}};
  facts.add("served", "Served", figure(fraction(25, 3), "8.33", "lb"));
  facts.add("share", "Share", figure(fraction(1, 8), "0.13"));
  facts.add("paste", "Paste", figure_as("1/2 cup", fraction(1, 2), "0.5", "cup"));
  facts.add("by", "By", words("weight"));
  facts.add("none", "None", Cell{});
  const json written = json_of(facts)["yield"];
  CHECK(fact(written, "served") == json({{"exact", "25/3"}, {"shown", "8.33"}, {"unit", "lb"}}));
  CHECK(fact(written, "share") == json({{"exact", "0.125"}, {"shown", "0.13"}}));
  CHECK(fact(written, "paste")["text"] == "1/2 cup");
  CHECK(fact(written, "by") == "weight");
  CHECK(fact(written, "none").is_null());
}

TEST_CASE("marks of a page stay on the page") {
  Facts facts{"sums", "", {}};
  facts.add("cost", "  of it used", figure_as("$12,345.00", 12345, "12345.00", "USD"));
  const json written = json_of(facts)["sums"];
  CHECK(written[0]["label"] == "of it used");
  CHECK_FALSE(written[0]["value"].contains("text"));
  Table table{"goods", "", {page_column("done", ""), words_column("item", "Of")}, {}, {}, {}};
  table.add({words("[ ]"), words("garlic")});
  CHECK(json_of(table)["goods"] == json::array({{{"item", "garlic"}}}));
}

TEST_CASE("a number of any size stays exact") {
  Rational huge = 1;
  for (int i = 0; i < 100; ++i) huge *= 10;
  Facts facts{"f", "", {}};
  facts.add("huge", "", figure(huge + fraction(1, 3), "big"));
  const std::string exact = fact(json_of(facts)["f"], "huge")["exact"];
  CHECK(exact == "3" + std::string(99, '0') + "1/3");
}

TEST_CASE("rows carry their group, and sources their number") {
  Table table{"lines", "Lines", {words_column("item", "Item")}, {}, {}, {"a note"}};
  table.open_group("Paste");
  table.add({with_footnote(words("garlic"), 2)});
  table.add({words("salt")});
  table.totals.push_back({words("Total")});
  const json written = json_of(table);
  CHECK(written["lines"] ==
        json::array({{{"group", "Paste"}, {"item", "garlic"}, {"item_source", 2}},
                     {{"group", "Paste"}, {"item", "salt"}, {"item_source", nullptr}}}));
  CHECK(written["lines_totals"] == json::array({{{"item", "Total"}}}));
  CHECK(written["lines_notes"][0]["text"] == "a note");
}

TEST_CASE("tables of one array are one, and all its rows have the same keys") {
  Sheet sheet(SheetKind::order);
  Table first{"supplier_1", "", {words_column("item", "")}, {}, {}, {}, "lines"};
  first.add({words("salt")});
  Table second{"supplier_2", "",     {words_column("item", ""), data_column("kept")}, {}, {},
               {},           "lines"};
  second.open_group("on Friday");
  second.add({words("lamb"), words("chilled")});
  sheet.add(first);
  sheet.add(second);
  const json arrays = json::parse(write_json(sheet))["arrays"];
  CHECK(arrays["lines"] ==
        json::array({{{"item", "salt"}, {"group", nullptr}, {"kept", nullptr}},
                     {{"item", "lamb"}, {"group", "on Friday"}, {"kept", "chilled"}}}));
  CHECK(array_names(sheet) == std::vector<std::string>{"lines"});
}

TEST_CASE("steps, bars, boxes, paragraphs and signatures") {
  const Steps steps{"s", "", {{"Rub.", words("1 h"), {{figure(8, "8", "cloves"), "garlic"}}}}};
  const json step = json_of(steps);
  CHECK(step["s"][0]["step"]["exact"] == "1");
  CHECK(step["s"][0]["takes"] == "1 h");
  CHECK(step["s_uses"][0]["amount"]["unit"] == "cloves");
  CHECK_FALSE(step["s_uses"][0].contains("metric"));
  const Steps both{"s", "", {{"Rub.", Cell{}, {{words("8"), "garlic", words("24 g")}}}}, "metric"};
  CHECK(json_of(both)["s_uses"][0]["metric"] == "24 g");
  const Bars bars{"b", "", {{"served", "Served", fraction(2, 3), words("2 lb"), {}}}};
  CHECK(json_of(bars)["b"][0]["share"]["exact"] == "2/3");
  for (const json& written :
       {json_of(Box{"a", "", {"x"}})["a"], json_of(Signatures{"a", {"x"}})["a"],
        json_of(Paragraphs{"a", "", {"x"}})["a"]}) {
    REQUIRE(written.size() == 1);
    CHECK(written[0]["text"] == "x");
    CHECK(written[0]["number"]["exact"] == "1");
  }
}

TEST_CASE("rows of a part say whose they are") {
  Sheet sheet(SheetKind::cards);
  sheet.add(Box{"allergens", "", {"milk"}});
  sheet.add(Part{"jus", "Jus"});
  sheet.add(Box{"allergens", "", {"celery"}});
  const json arrays = json::parse(write_json(sheet))["arrays"];
  REQUIRE(arrays["allergens"].size() == 2);
  CHECK(arrays["allergens"][0]["part"].is_null());
  CHECK(arrays["allergens"][1]["part"] == "Jus");
  CHECK(arrays["allergens"][1]["text"] == "celery");
}

TEST_CASE("one array is one flat table with one heading") {
  Sheet sheet(SheetKind::order);
  Table table{
      "lines", "", {page_column("done", ""), words_column("item", ""), figures_column("cost", "")},
      {},      {}, {}};
  table.add({words("[ ]"), words("salt"), figure(fraction(1, 3), "0.33", "USD")});
  table.totals.push_back({{}, words("Total"), figure(1, "1.00", "USD")});
  sheet.add(table);
  CHECK(write_array(sheet, "lines") ==
        "item,cost,cost_exact,cost_unit\r\nsalt,0.33,1 over 3,USD\r\n");
  CHECK(write_array(sheet, "lines_totals") ==
        "item,cost,cost_exact,cost_unit\r\nTotal,1.00,1,USD\r\n");
  CHECK(!write_array(sheet, "sums"));
  CHECK(json::parse(write_json(sheet, "lines"))["arrays"].size() == 1);
}

TEST_CASE("bytes that are not UTF-8 do not stop the writer") {
  CHECK(json_of(Paragraphs{"p", "", {"a\xFF"}})["p"][0]["text"] == "a\uFFFD");
}
