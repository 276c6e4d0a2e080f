// SPDX-License-Identifier: MIT
#include "platewright/workbook/write_workbook.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "workbook/cell_text.hpp"
#include "workbook/whole_workbook.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Workbook one_cell(std::string text) {
  return {"a title", Currency("USD"), {{"Sheet", {10}, {{0, 0, std::move(text)}}}}};
}

/// False where this was built without the library.
bool can_write() {
  try {
    static_cast<void>(write_workbook(one_cell("words")));
    return true;
  } catch (const Failure& failure) {
    REQUIRE(failure.problem().id == "workbook-not-built");
    return false;
  }
}

}  // namespace

TEST_CASE("a workbook is a package whose bytes do not change") {
  if (!can_write()) return;
  const std::string bytes = write_workbook(one_cell("=1+1"));
  CHECK(bytes.substr(0, 2) == "PK");
  CHECK(bytes == write_workbook(one_cell("=1+1")));
  CHECK(bytes != write_workbook(one_cell("=1+2")));
}

TEST_CASE("what a spreadsheet does not take is said") {
  if (!can_write()) return;
  Workbook book = one_cell("words");
  book.sheets.front().name = "a name of a sheet that is longer than 31";
  CHECK(problem_of([&] { return write_workbook(book); }).id == "workbook-not-written");
  CHECK(problem_of([&] { return write_workbook(one_cell(std::string(32768, 'a'))); }).id ==
        "workbook-text-too-long");
  CHECK(!write_workbook(one_cell(std::string(32767, 'a'))).empty());
}

TEST_CASE("a workbook that lacks anything is not taken for whole") {
  if (!can_write()) return;
  Workbook book = one_cell("words");
  book.sheets.front().cells.push_back({1, 0, "more words"});
  book.sheets.front().cells.push_back({1, 1, Rational(7)});
  book.sheets.push_back({"Empty", {}, {}});
  const std::string bytes = write_workbook(book);
  CHECK(is_whole(bytes, book));
  for (std::size_t size = 0; size < bytes.size(); size += 7) {
    CHECK_FALSE(is_whole(bytes.substr(0, size), book));
  }
  Workbook more = book;
  more.sheets.front().cells.push_back({2, 0, Rational(7)});
  CHECK_FALSE(is_whole(bytes, more));
  more = book;
  more.sheets.push_back({"One more", {}, {}});
  CHECK_FALSE(is_whole(bytes, more));
}

TEST_CASE("a cell holds well-formed text alone") {
  CHECK(cell_text("cr\u00E8me") == "cr\u00E8me");
  CHECK(cell_text("a\xFF"
                  "b") ==
        "a\uFFFD"
        "b");
  CHECK(cell_text(std::string("a\0b", 3)) ==
        "a\uFFFD"
        "b");
}
