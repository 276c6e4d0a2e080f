// SPDX-License-Identifier: MIT
#include <string>

#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

const std::string head = "section,key,value\r\nsheet,kind,cost\r\nsheet,title,Lamb\r\n";

std::string csv_of(Block block) {
  Sheet sheet(SheetKind::cost);
  sheet.title = "Lamb";
  sheet.add(std::move(block));
  return write_csv(sheet);
}

std::string text_field(const std::string& text) {
  const std::string csv = csv_of(Paragraphs{"notes", "", {text}});
  const std::string begin = head + "section,number,text\r\nnotes,1,";
  REQUIRE(csv.starts_with(begin));
  REQUIRE(csv.ends_with("\r\n"));
  return csv.substr(begin.size(), csv.size() - begin.size() - 2);
}

}  // namespace

// Quoting after RFC 4180, section 2.
TEST_CASE("fields are quoted where they need it") {
  CHECK(text_field("plain") == "plain");
  CHECK(text_field("leg, bone-in") == "\"leg, bone-in\"");
  CHECK(text_field("a \"fine\" dice") == "\"a \"\"fine\"\" dice\"");
  CHECK(text_field("one\r\ntwo") == "\"one\ntwo\"");
  CHECK(text_field(" spaced") == "\" spaced\"");
}

TEST_CASE("words that look like a formula get an apostrophe") {
  CHECK(text_field("=1+1") == "'=1+1");
  CHECK(text_field("+cmd") == "'+cmd");
  CHECK(text_field("-cmd") == "'-cmd");
  CHECK(text_field("@sum") == "'@sum");
  CHECK(text_field("\uFF1D1") == "'\uFF1D1");
  CHECK(text_field("-1.2") == "-1.2");
  CHECK(text_field("-1+cmd") == "'-1+cmd");
}

// What a spreadsheet reads as a day when it opens a file: two or three numbers with / or -.
TEST_CASE("nothing but a day is written so that a spreadsheet makes a day of it") {
  CHECK(text_field("1/2") == "'1/2");
  CHECK(text_field("2-3") == "'2-3");
  CHECK(text_field("1/2/3") == "'1/2/3");
  CHECK(text_field("2-3 tbsp") == "2-3 tbsp");
  CHECK(text_field("1 1/2") == "1 1/2");
  CHECK(text_field("1/20000") == "1/20000");
  CHECK(text_field("1/2/3/4") == "1/2/3/4");
  CHECK(text_field("2027-10-09") == "2027-10-09");
  Facts facts{"share", "", {}};
  facts.add("of", "Of", figure(fraction(1, 2), "1/2"));
  facts.add("rest", "Rest", figure(fraction(-19, 12), "-1.58"));
  CHECK(csv_of(facts).ends_with("share,of,Of,'1/2,0.5\r\nshare,rest,Rest,-1.58,-19 over 12\r\n"));
}

TEST_CASE("columns of data are fields like any other") {
  Table table{"lines", "", {words_column("item", "Item"), data_column("by")}, {}, {}, {}};
  table.add({words("lamb"), words("2027-10-08")});
  CHECK(csv_of(table).ends_with("section,item,by\r\nlines,lamb,2027-10-08\r\n"));
}

TEST_CASE("control characters come out as escapes") {
  CHECK(text_field("a\x1B") == "a\\x1b");
  CHECK(text_field("\t=1") == "'\\x09=1");
  CHECK(text_field("\xFF") == "\\xff");
}

TEST_CASE("a figure gives its rounded number, its exact value and its unit") {
  Table table{"lines", "", {words_column("item", "Item"), figures_column("weight", "W")},
              {},      {}, {}};
  table.add({words("lamb"), figure(fraction(25, 3), "8.33", "lb")});
  table.add({words("salt"), figure(fraction(1, 8), "0.13", "lb")});
  table.add({words("pepper"), Cell{}});
  table.totals.push_back({words("Total"), figure(fraction(203, 24), "8.46", "lb")});
  CHECK(csv_of(table) ==
        "section,key,value,,\r\nsheet,kind,cost,,\r\nsheet,title,Lamb,,\r\n"
        "section,item,weight,weight exact,weight unit\r\n"
        "lines,lamb,8.33,25 over 3,lb\r\n"
        "lines,salt,0.13,0.125,lb\r\n"
        "lines,pepper,,,\r\n"
        "lines total,Total,8.46,203 over 24,lb\r\n");
}

TEST_CASE("groups and sources have their own fields") {
  Table table{"lines", "", {words_column("item", "Item")}, {}, {}, {}};
  table.open_group("Paste");
  table.add({with_footnote(words("garlic"), 2)});
  CHECK(csv_of(table).ends_with("section,group,item,item source\r\nlines,Paste,garlic,2\r\n"));
}

TEST_CASE("facts, steps and bars are records") {
  Facts facts{"yield", "Yield", {}};
  facts.add("served", "Served", figure(fraction(1, 3), "0.33"));
  CHECK(csv_of(facts).ends_with(
      "section,key,label,value,value exact\r\nyield,served,Served,0.33,1 over 3\r\n"));
  Steps steps{"method", "", {{"Rub.", words("1 h"), {{figure(8, "8", "cloves"), "garlic"}}}}};
  CHECK(
      csv_of(steps).ends_with("section,step,text,takes,amount,amount exact,amount unit\r\n"
                              "method,1,Rub.,1 h,,,\r\n"
                              "method uses,1,garlic,,8,8,cloves\r\n"));
  steps.steps[0].lines[0].beside = words("24 g");
  steps.beside = "metric";
  CHECK(
      csv_of(steps).ends_with("section,step,text,takes,amount,amount exact,amount unit,metric\r\n"
                              "method,1,Rub.,1 h,,,,\r\n"
                              "method uses,1,garlic,,8,8,cloves,24 g\r\n"));
  Bars bars{"ladder", "", {{"served", "served", fraction(2, 3), words("2 lb"), {}}}};
  CHECK(csv_of(bars).ends_with(
      "section,key,label,share exact,value\r\nladder,served,served,2 over 3,2 lb\r\n"));
}

TEST_CASE("the sections of a part begin with its key") {
  Sheet sheet(SheetKind::card);
  sheet.add(Part{"jus", "Jus"});
  sheet.add(Box{"allergens", "", {"celery"}});
  sheet.footnotes = {"a table"};
  const std::string csv = write_csv(sheet);
  CHECK(csv.find("jus/allergens,1,celery\r\n") != std::string::npos);
  CHECK(csv.ends_with("sources,1,a table\r\n"));
}
