// SPDX-License-Identifier: MIT
#include <sstream>
#include <string>
#include <vector>

#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

std::vector<std::vector<std::string>> pages_of(const std::string& text) {
  std::vector<std::vector<std::string>> pages;
  std::istringstream whole(text);
  for (std::string page; std::getline(whole, page, '\f');) {
    pages.emplace_back();
    std::istringstream lines(page);
    for (std::string line; std::getline(lines, line);) pages.back().push_back(line);
  }
  return pages;
}

Sheet long_order(int rows) {
  Sheet sheet(SheetKind::card);
  sheet.title = "Order";
  Table table{"order", "To buy", {words_column("item", "Item")}, {}, {}, {}};
  for (int i = 1; i <= rows; ++i) table.add({words("item " + std::to_string(i))});
  sheet.add(table);
  return sheet;
}

}  // namespace

TEST_CASE("every page has the same length and says which it is") {
  const auto pages = pages_of(write_text(long_order(50), {40, true, 24}));
  REQUIRE(pages.size() == 3);
  for (const auto& page : pages) CHECK(page.size() == 24);
  CHECK(pages[0].back() == "Order                        page 1 of 3");
  CHECK(pages[2].back() == "Order                        page 3 of 3");
}

TEST_CASE("no row is lost at the end of a page") {
  const std::string text = write_text(long_order(50), {40, true, 24});
  for (int i = 1; i <= 50; ++i) {
    CHECK(text.find("item " + std::to_string(i) + "\n") != std::string::npos);
  }
}

TEST_CASE("a table that goes on has its headings again") {
  const auto pages = pages_of(write_text(long_order(50), {40, true, 24}));
  REQUIRE(pages.size() == 3);
  CHECK(pages[1][0] == "Item");
  CHECK(pages[1][1] == "-------");
  CHECK(pages[1][2] == "item 16");
}

TEST_CASE("a box is not cut where it fits on the next page") {
  Sheet sheet = long_order(10);
  sheet.add(Box{"allergens", "ALLERGENS", {"milk", "mustard"}});
  const auto pages = pages_of(write_text(sheet, {40, true, 20}));
  REQUIRE(pages.size() == 2);
  CHECK(pages[1][0].starts_with("+=="));
  CHECK(pages[1][5].starts_with("+=="));
}

TEST_CASE("a box longer than a page is cut") {
  Sheet sheet(SheetKind::card);
  sheet.title = "Cautions";
  sheet.add(Box{"cautions", "", std::vector<std::string>(40, "hot")});
  const std::string text = write_text(sheet, {40, true, 20});
  CHECK(pages_of(text).size() == 3);
}

TEST_CASE("widths and lengths out of bounds count as the nearest bound") {
  const Sheet sheet = long_order(30);
  CHECK(write_text(sheet, {0, true, 0}) == write_text(sheet, {40, true, 0}));
  CHECK(write_text(sheet, {4000000000U, true, 0}) == write_text(sheet, {1000, true, 0}));
  CHECK(write_text(sheet, {40, true, 1}) == write_text(sheet, {40, true, 20}));
  CHECK(write_text(sheet, {40, true, 4000000000U}) == write_text(sheet, {40, true, 1000}));
}

TEST_CASE("no lines per page is one long page without a foot") {
  const std::string text = write_text(long_order(200), {40, true, 0});
  CHECK(text.find('\f') == std::string::npos);
  CHECK(text.find("page 1") == std::string::npos);
}
