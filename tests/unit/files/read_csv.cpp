// SPDX-License-Identifier: MIT
// CSV as real spreadsheets write it (RFC 4180), and what is wrong with a list at its place.

#include "csv/read_csv.hpp"

#include "support/catch.hpp"

using namespace platewright;

namespace {

std::string first_problem(const std::string& text) {
  ProblemList problems;
  const auto table = csv::read_csv(text, "list.csv", ',', problems);
  if (table || problems.all().empty()) return "none";
  const Problem& first = problems.all().front();
  return first.id + " " + std::to_string(first.place.line) + ":" +
         std::to_string(first.place.column);
}

csv::Table table_of(const std::string& text, char separator = ',') {
  ProblemList problems;
  const auto table = csv::read_csv(text, "list.csv", separator, problems);
  REQUIRE(table.has_value());
  return *table;
}

}  // namespace

TEST_CASE("fields in quotation marks hold separators, line ends and doubled quotation marks") {
  const csv::Table table = table_of("Item,Price\r\n\"LEG, \"\"NZ\"\"\r\nfrozen\",8.95\r\n");
  REQUIRE(table.records.size() == 1);
  CHECK(table.records[0].fields[0].text == "LEG, \"NZ\"\r\nfrozen");
  CHECK(table.records[0].fields[1].text == "8.95");
  CHECK(table.records[0].fields[1].line == 3);
}

TEST_CASE("a byte order mark, either line end, a missing last one and empty lines do no harm") {
  const csv::Table table = table_of("\xEF\xBB\xBFItem,Price\n\nleg,\n");
  CHECK(table.header.fields[0].text == "Item");
  CHECK(table.header.fields[0].column == 1);
  REQUIRE(table.records.size() == 1);
  CHECK(table.records[0].fields[1].text.empty());
  CHECK(table_of("a,b\r\nc,d").records.size() == 1);
  CHECK(table_of("a;b,c\nd;e", ';').records[0].fields.size() == 2);
}

TEST_CASE("a heading between the rows is left out and reported") {
  ProblemList problems;
  const auto table = csv::read_csv("a,b\nMEATS\nc,d\n", "list.csv", ',', problems);
  REQUIRE(table.has_value());
  CHECK(table->records.size() == 1);
  REQUIRE(problems.all().size() == 1);
  CHECK(problems.all().front().id == "csv-heading-row");
  CHECK(problems.all().front().severity == Severity::warning);
}

TEST_CASE("what is wrong with a list is reported where it stands") {
  CHECK(first_problem("") == "csv-empty 1:1");
  CHECK(first_problem("a,b,c\nd,e\n") == "csv-field-count 2:1");
  CHECK(first_problem("a,b\nc,d,e\n") == "csv-field-count 2:1");
  CHECK(first_problem("a,b\nc,5\" pan\n") == "csv-stray-quote 2:4");
  CHECK(first_problem("a,b\nc,\"d\"e\n") == "csv-stray-quote 2:6");
  CHECK(first_problem("a,b\nc,\"d\n") == "csv-quote-not-closed 2:3");
}

TEST_CASE("rows and fields have bounds") {
  std::string rows = "a,b\n";
  for (int i = 0; i < 200'000; ++i) rows += "1,2\n";
  CHECK(first_problem(rows).substr(0, 14) == "file-too-large");
  CHECK(first_problem("a,b\n" + std::string(1500, ',') + "\n").substr(0, 14) == "file-too-large");
}
