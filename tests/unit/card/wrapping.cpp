// SPDX-License-Identifier: MIT
#include <string>
#include <vector>

#include "platewright/card/display.hpp"
#include "support/catch.hpp"

using platewright::longest_word;
using platewright::wrapped;
using Lines = std::vector<std::string>;

TEST_CASE("text is broken at spaces") {
  CHECK(wrapped("lamb leg, bone-in", 9) == Lines{"lamb leg,", "bone-in"});
  CHECK(wrapped("lamb leg, bone-in", 8) == Lines{"lamb", "leg,", "bone-in"});
  CHECK(wrapped("lamb", 20) == Lines{"lamb"});
}

TEST_CASE("runs of spaces count as one, and nothing still is one line") {
  CHECK(wrapped("  a   b ", 20) == Lines{"a b"});
  CHECK(wrapped("", 20) == Lines{""});
  CHECK(wrapped("   ", 20) == Lines{""});
}

TEST_CASE("a word longer than the line is broken") {
  CHECK(wrapped("a abcdefgh b", 3) == Lines{"a", "abc", "def", "gh", "b"});
  CHECK(wrapped("a abcdefg", 3) == Lines{"a", "abc", "def", "g"});
  CHECK(wrapped("abcdefg h", 3) == Lines{"abc", "def", "g h"});
}

TEST_CASE("a word is never broken before a combining character") {
  CHECK(wrapped("e\u0301e\u0301e\u0301", 2) == Lines{"e\u0301e\u0301", "e\u0301"});
}

TEST_CASE("a wide character is not put where only half of it has room") {
  CHECK(wrapped("\u6D77\u82D4\u6D77", 3) == Lines{"\u6D77", "\u82D4", "\u6D77"});
  CHECK(wrapped("\u6D77\u82D4\u6D77", 4) == Lines{"\u6D77\u82D4", "\u6D77"});
}

TEST_CASE("a number keeps its percent or degree sign on its line") {
  CHECK(wrapped("to 130 \u00B0F inside", 6) == Lines{"to", "130 \u00B0F", "inside"});
  CHECK(wrapped("yields 62.5 %", 11) == Lines{"yields", "62.5 %"});
}

TEST_CASE("a width below two counts as two") {
  CHECK(wrapped("abc", 0) == Lines{"ab", "c"});
}

TEST_CASE("the longest word is measured in columns") {
  CHECK(longest_word("") == 0);
  CHECK(longest_word("a cre\u0300me b") == 5);
  CHECK(longest_word("\u6D77\u82D4 abc") == 4);
}
