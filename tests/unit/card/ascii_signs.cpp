// SPDX-License-Identifier: MIT
#include "platewright/card/display.hpp"
#include "support/catch.hpp"

using platewright::in_ascii_signs;
using platewright::on_one_line;

TEST_CASE("the signs of a sheet have an ASCII form") {
  CHECK(in_ascii_signs("130 \u00B0F (54 \u00B0C)") == "130 F (54 C)");
  CHECK(in_ascii_signs("an angle of 30\u00B0") == "an angle of 30 deg");
  CHECK(in_ascii_signs("6 \u00D7 2.5 kg \u2013 drained") == "6 x 2.5 kg - drained");
  CHECK(in_ascii_signs("\u2264 41 \u2026 \u201Ccold\u201D") == "<= 41 ... \"cold\"");
}

TEST_CASE("a fraction sign becomes a fraction, parted from the whole before it") {
  CHECK(in_ascii_signs("\u00BD cup") == "1/2 cup");
  CHECK(in_ascii_signs("1\u00BD cup") == "1 1/2 cup");
  CHECK(in_ascii_signs("1 \u2154 cup") == "1 2/3 cup");
}

TEST_CASE("letters stay as they are") {
  CHECK(in_ascii_signs("cr\u00E8me \u6D77\u82D4") == "cr\u00E8me \u6D77\u82D4");
  CHECK(in_ascii_signs("\xFF") == "\xFF");
}

TEST_CASE("data on one line has no control characters") {
  CHECK(on_one_line("a\nb\tc") == "a b c");
  CHECK(on_one_line("a\x1B[31m") == "a\\x1b[31m");
  CHECK(on_one_line("\u202Eabc") == "\\u202eabc");
}
