// SPDX-License-Identifier: MIT
// Large print: capitals and space.

#include "platewright/card/display.hpp"
#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;

TEST_CASE("capitals of letters beyond ASCII, and nothing else changed") {
  CHECK(in_capitals("cr\u00E8me br\u00FBl\u00E9e, 1/2 \u00D7") ==
        "CR\u00C8ME BR\u00DBL\u00C9E, 1/2 \u00D7");
  CHECK(in_capitals("a\xFF") == "A\xFF");
  CHECK(in_capitals("").empty());
}

TEST_CASE("a large page has its headings in capitals and an empty line after every row") {
  Sheet sheet(SheetKind::card);
  sheet.title = "stew";
  Table table;
  table.key = "lines";
  table.title = "Ingredients";
  table.columns = {figures_column("amount", "Amount"), words_column("name", "Name")};
  table.add({words("1 lb"), words("garlic")});
  table.add({words("2 lb"), words("onion")});
  sheet.add(table);
  TextOptions options;
  options.width = 40;
  options.ascii = true;
  options.large = true;
  const std::string text = write_text(sheet, options);
  CHECK(text.rfind("STEW\n", 0) == 0);
  CHECK(text.find("INGREDIENTS\n===========\n") != std::string::npos);
  CHECK(text.find("garlic\n\n") != std::string::npos);
  options.large = false;
  CHECK(write_text(sheet, options).find("garlic\n  2 lb   onion") != std::string::npos);
}
