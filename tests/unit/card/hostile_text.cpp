// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>

#include "card/records.hpp"
#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;
using detail::guarded;

// OWASP, CSV Injection: a cell that begins with =, +, - or @, or with a tab or carriage return
// before it; spreadsheets also pass over spaces.
TEST_CASE("a formula behind what a spreadsheet passes over is guarded") {
  for (const std::string blank : {"", " ", "\t", "\r", "\n", "\u00A0", "\u2003", "\u3000", "\u200B",
                                  "\uFEFF", " \u00A0\t "}) {
    for (const std::string sign : {"=", "+", "-", "@", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"}) {
      const std::string cell = blank + sign + "cmd";
      CHECK(guarded(cell) == "'" + cell);
    }
    CHECK(guarded(blank + "1/2") == "'" + blank + "1/2");
  }
  CHECK(guarded(" salt") == " salt");
  CHECK(guarded(" -1.5") == " -1.5");
  CHECK(guarded(" ") == " ");
}

TEST_CASE("signs that nobody sees are escapes in JSON, and mean the same") {
  Sheet sheet(SheetKind::cost);
  sheet.title = "a\u202Eb\u2066\u200B\u0085\x7F\U000E0041\x1B \u0645\u200C\u0628 cr\u00E8me";
  const std::string text = write_json(sheet);
  CHECK(text.find("a\\u202eb\\u2066\\u200b\\u0085\\u007f\\udb40\\udc41\\u001b") !=
        std::string::npos);
  CHECK(text.find("\u0645\u200C\u0628 cr\u00E8me") != std::string::npos);
  CHECK(nlohmann::json::parse(text)["title"] == sheet.title);
}
