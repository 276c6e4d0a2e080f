// SPDX-License-Identifier: MIT
// Names as they are compared.

#include "platewright/problem/folded_name.hpp"

#include "support/catch.hpp"

using platewright::folded_abbreviation;
using platewright::folded_name;

TEST_CASE("capitals and spaces do not count, full stops do") {
  CHECK(folded_name("  Lamb \t Leg ") == "lamb leg");
  CHECK(folded_name("pan, 2.5 in") != folded_name("pan, 25 in"));
  CHECK(folded_name("Cr\u00C8me") == "cr\u00C8me");
  CHECK(folded_name(" \t ").empty());
}

TEST_CASE("full stops of an abbreviation do not count") {
  CHECK(folded_abbreviation("Fl. Oz.") == "fl oz");
  CHECK(folded_abbreviation(" . a . ") == "a");
  CHECK(folded_abbreviation("..").empty());
}
