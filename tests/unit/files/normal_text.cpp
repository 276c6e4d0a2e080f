// SPDX-License-Identifier: MIT
#include "yaml/normal_text.hpp"

#include "platewright/problem/problem_list.hpp"
#include "support/catch.hpp"
#include "yaml/read_yaml.hpp"
#include "yaml/sound_text.hpp"

using namespace platewright;
using namespace platewright::yaml;

// Examples of UAX #15, figures 3 to 5.
TEST_CASE("an accent of its own joins its letter") {
  CHECK(normal_text("cre\u0300me") == "cr\u00E8me");
  CHECK(normal_text("A\u030A") == "\u00C5");
  CHECK(normal_text("\u212B") == "\u00C5");
  CHECK(normal_text("s\u0323\u0307") == "\u1E69");
  CHECK(normal_text("\uFB01g") == "\uFB01g");
  CHECK(normal_text("plain") == "plain");
}

TEST_CASE("a sign that nobody sees is named with its place") {
  const auto found = unfit_sign_in("al\u200Bmonds");
  REQUIRE(found);
  CHECK(found->id == "unseen-sign");
  CHECK(found->found == "U+200B, which nobody sees, as sign 3 of \"al\\u200bmonds\"");
  for (const char* text : {"\u202Ea", "a\u00AD", "a\u200Db", "a\uFE0F", "a\x1B", "a\U000E0041"}) {
    CHECK(unfit_sign_in(text));
  }
}

TEST_CASE("what is seen, and what a script is spelt with, is taken") {
  for (const char* text : {"salt", "cr\u00E8me", "two\nlines\tand a tab",
                           "\u0645\u06CC\u200C\u062E", "\u0915\u094D\u200D\u0937", ""}) {
    CHECK_FALSE(unfit_sign_in(text));
  }
}

TEST_CASE("a name has a letter or a digit") {
  for (const char* name : {"salt", "00", "\u6D77", "\u00BD", "#10"}) CHECK(says_something(name));
  for (const char* name : {"", " ", "---", "...", "\u2014", "\u20AC"}) {
    CHECK_FALSE(says_something(name));
  }
}

TEST_CASE("what a text that is no UTF-8 may be") {
  CHECK(likely_encoding("cr\xE8me \x80 1.20") == "WINDOWS-1252");
  CHECK(likely_encoding(std::string_view("\xFF\xFE"
                                         "a\0",
                                         4)) == "UTF-16");
  CHECK(likely_encoding("\x81").empty());
  CHECK(likely_encoding(std::string_view("\xE8\0", 2)).empty());
}

TEST_CASE("keys of a book are one name however they are typed") {
  ProblemList problems;
  const auto root = read_yaml("cr\u00E8me: 1\ncre\u0300me: 2\n", "book.yaml", problems);
  REQUIRE(root);
  REQUIRE(problems.all().size() == 1);
  CHECK(problems.all().front().id == "key-twice");
}
