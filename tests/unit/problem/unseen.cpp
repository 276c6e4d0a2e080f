// SPDX-License-Identifier: MIT
#include "platewright/problem/unseen.hpp"

#include "platewright/problem/scripts.hpp"
#include "platewright/problem/text.hpp"
#include "support/catch.hpp"

using namespace platewright;

// Unicode Character Database 15.0, DerivedCoreProperties.txt: Default_Ignorable_Code_Point.
TEST_CASE("signs that are shown as nothing") {
  for (const char32_t code : {0x00ADU, 0x034FU, 0x200BU, 0x200DU, 0x202EU, 0x2060U, 0x3164U,
                              0xFE0FU, 0xFEFFU, 0xE0001U, 0xE0100U}) {
    CHECK(is_default_ignorable(code));
  }
  for (const unsigned code : {0x20U, 0xA0U, 0x2010U, 0x2070U, 0x3000U, 0x1F969U, 0xE1000U}) {
    CHECK_FALSE(is_default_ignorable(code));
  }
}

TEST_CASE("what only shapes the sign before it is shown as it is") {
  CHECK(escaped("\u0645\u200C\u0628") == "\u0645\u200C\u0628");
  CHECK(escaped("al\u200Bmonds") == "al\\u200bmonds");
  CHECK(escaped("a\U000E0041b") == "a\\U000e0041b");
}

TEST_CASE("a word of two scripts") {
  const auto mixed = mixed_word("fine s\u0430lt");
  REQUIRE(mixed);
  CHECK(mixed->word == "s\u0430lt");
  CHECK(name_of(mixed->first) == "Latin");
  CHECK(name_of(mixed->second) == "Cyrillic");
  CHECK(name_of(mixed_word("\u03BFil")->first) == "Greek");
}

TEST_CASE("words of one script each are no mixture") {
  for (const char* name : {"salt", "cr\u00E8me fra\u00EEche", "\u0441\u043E\u043B\u044C",
                           "salt \u0441\u043E\u043B\u044C", "10 \u00B5m sieve", "\u03B1-salt", "",
                           "\u6D77\u82D4 nori"}) {
    CHECK_FALSE(mixed_word(name));
  }
}
