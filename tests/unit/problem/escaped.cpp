// SPDX-License-Identifier: MIT
#include <string>

#include "platewright/problem/text.hpp"
#include "support/catch.hpp"

using platewright::character_at;
using platewright::escaped;
using platewright::in_quotes;

TEST_CASE("what can be seen stays as it is") {
  CHECK(escaped("cr\u00E8me \u6D77 \U0001F969") == "cr\u00E8me \u6D77 \U0001F969");
}

TEST_CASE("what can't be seen is escaped") {
  CHECK(escaped("\x1B[2J\n") == "\\x1b[2J\\x0a");
  CHECK(escaped("\u009B") == "\\u009b");
  CHECK(escaped("a\u202Eb\u2066c\u200F") == "a\\u202eb\\u2066c\\u200f");
  CHECK(escaped("\uFEFF") == "\\ufeff");
}

TEST_CASE("bytes that are not UTF-8 are escaped one by one") {
  CHECK(escaped("\xFF") == "\\xff");
  CHECK(escaped("\xC0\xAF") == "\\xc0\\xaf");
  CHECK(escaped("\xED\xA0\x80") == "\\xed\\xa0\\x80");
  CHECK(escaped("\xE2\x82") == "\\xe2\\x82");
}

TEST_CASE("quoted text is shortened between characters") {
  CHECK(in_quotes("abcdef", 3) == "\"abc...\"");
  CHECK(in_quotes("ab\u00E8", 3) == "\"ab...\"");
}

// The boundaries of RFC 3629, section 4.
TEST_CASE("characters at the edges of each length") {
  CHECK(character_at("\u0080", 0).code == 0x80);
  CHECK(character_at("\u07FF", 0).length == 2);
  CHECK(character_at("\u0800", 0).length == 3);
  CHECK(character_at("\U0010FFFF", 0).length == 4);
  CHECK(character_at("\xF4\x90\x80\x80", 0).length == 0);
  CHECK(character_at("\xE0\x9F\xBF", 0).length == 0);
}
