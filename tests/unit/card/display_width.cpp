// SPDX-License-Identifier: MIT
#include <string>

#include "platewright/card/display.hpp"
#include "support/catch.hpp"

using platewright::display_width;
using platewright::padded_after;
using platewright::padded_before;

// Widths after Unicode Standard Annex #11, East Asian Width.
TEST_CASE("display width counts columns, not bytes") {
  CHECK(display_width("") == 0);
  CHECK(display_width("garlic") == 6);
  CHECK(display_width("cr\u00E8me") == 5);
  CHECK(display_width("\u6D77\u82D4") == 4);
  CHECK(display_width("1\u00BD \u00B0F") == 5);
}

TEST_CASE("combining characters take no column") {
  CHECK(display_width("cre\u0300me") == 5);
  CHECK(display_width("a\u0301\u0302\u0303") == 1);
}

TEST_CASE("a byte that is not UTF-8 counts one column") {
  CHECK(display_width("a\xFF"
                      "b") == 3);
  CHECK(display_width("\xE2\x82") == 2);
}

TEST_CASE("padding fills up to the width and never cuts") {
  CHECK(padded_after("\u6D77", 4) == "\u6D77  ");
  CHECK(padded_before("e\u0301", 3) == "  e\u0301");
  CHECK(padded_after("rosemary", 4) == "rosemary");
  CHECK(padded_before("rosemary", 4) == "rosemary");
}
