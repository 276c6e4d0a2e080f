#include <nlohmann/json.hpp>
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
  return json::parse(write_json(sheet))["sections"];
}

}  // namespace

TEST_CASE("the top of a sheet") {
  Sheet sheet(SheetKind::cost);
  sheet.title = "Lamb";
  sheet.date = "9 October 2027";
  sheet.subtitles = {"for 84"};
  sheet.footnotes = {"a table"};
  CHECK(write_json(sheet) == R"({
  "sheet": "cost",
  "title": "Lamb",
  "date": "9 October 2027",
  "subtitles": [
    "for 84"
  ],
  "sections": {},
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
  const json written = json_of(facts)["yield"]["facts"];
  CHECK(written["served"] == json({{"exact", "25/3"}, {"shown", "8.33"}, {"unit", "lb"}}));
  CHECK(written["share"] == json({{"exact", "0.125"}, {"shown", "0.13"}}));
  CHECK(written["paste"]["text"] == "1/2 cup");
  CHECK(written["by"] == "weight");
  CHECK(written["none"].is_null());
}

TEST_CASE("a number of any size stays exact") {
  Rational huge = 1;
  for (int i = 0; i < 100; ++i) huge *= 10;
  Facts facts{"f", "", {}};
  facts.add("huge", "", figure(huge + fraction(1, 3), "big"));
  const std::string exact = json_of(facts)["f"]["facts"]["huge"]["exact"];
  CHECK(exact == "3" + std::string(99, '0') + "1/3");
}

TEST_CASE("rows carry their group, and sources their number") {
  Table table{"lines", "Lines", {words_column("item", "Item")}, {}, {}, {"a note"}};
  table.open_group("Paste");
  table.add({with_footnote(words("garlic"), 2)});
  table.totals.push_back({words("Total")});
  const json written = json_of(table)["lines"];
  CHECK(written["rows"] ==
        json::array({{{"group", "Paste"}, {"item", "garlic"}, {"item_source", 2}}}));
  CHECK(written["totals"] == json::array({{{"item", "Total"}}}));
  CHECK(written["notes"] == json::array({"a note"}));
}

TEST_CASE("steps, bars, boxes, paragraphs and signatures") {
  const Steps steps{"s", "", {{"Rub.", words("1 h"), {{figure(8, "8", "cloves"), "garlic"}}}}};
  const json step = json_of(steps)["s"]["steps"][0];
  CHECK(step["number"] == 1);
  CHECK(step["takes"] == "1 h");
  CHECK(step["uses"][0]["amount"]["unit"] == "cloves");
  CHECK_FALSE(step["uses"][0].contains("metric"));
  const Steps both{"s", "", {{"Rub.", Cell{}, {{words("8"), "garlic", words("24 g")}}}}, "metric"};
  CHECK(json_of(both)["s"]["steps"][0]["uses"][0]["metric"] == "24 g");
  const Bars bars{"b", "", {{"served", "Served", fraction(2, 3), words("2 lb"), {}}}};
  CHECK(json_of(bars)["b"]["bars"][0]["share"] == "2/3");
  CHECK(json_of(Box{"a", "", {"milk"}})["a"]["lines"] == json::array({"milk"}));
  CHECK(json_of(Paragraphs{"p", "", {"x"}})["p"]["texts"] == json::array({"x"}));
  CHECK(json_of(Signatures{"g", {"client"}})["g"]["labels"] == json::array({"client"}));
}

TEST_CASE("the sections of a part stand inside it") {
  Sheet sheet(SheetKind::card);
  sheet.add(Box{"allergens", "", {"milk"}});
  sheet.add(Part{"jus", "Jus"});
  sheet.add(Box{"allergens", "", {"celery"}});
  sheet.add(Part{"rice", "Rice"});
  const json sections = json::parse(write_json(sheet))["sections"];
  CHECK(sections["allergens"]["lines"][0] == "milk");
  CHECK(sections["jus"]["sections"]["allergens"]["lines"][0] == "celery");
  CHECK(sections["rice"]["sections"].empty());
}

TEST_CASE("a key that is there twice loses nothing") {
  Sheet sheet(SheetKind::card);
  sheet.add(Box{"cautions", "", {"hot"}});
  sheet.add(Box{"cautions", "", {"sharp"}});
  const json sections = json::parse(write_json(sheet))["sections"];
  CHECK(sections["cautions"]["lines"][0] == "hot");
  CHECK(sections["cautions_2"]["lines"][0] == "sharp");
}

TEST_CASE("bytes that are not UTF-8 do not stop the writer") {
  CHECK(json_of(Paragraphs{"p", "", {"a\xFF"}})["p"]["texts"][0] == "a\uFFFD");
}
