// SPDX-License-Identifier: MIT
#include <string>

#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

Sheet titled_sheet() {
  Sheet sheet(SheetKind::card);
  sheet.title = "Lamb leg";
  return sheet;
}

std::string with_block(Block block, bool ascii = true) {
  Sheet sheet = titled_sheet();
  sheet.add(std::move(block));
  const std::string text = write_text(sheet, {40, ascii, 0});
  return "\n" + text.substr(text.find("\n\n") + 2);
}

}  // namespace

TEST_CASE("the date stands at the other edge of the title's line where there is room") {
  Sheet sheet = titled_sheet();
  sheet.date = "9 October 2027";
  sheet.subtitles = {"for 84 portions of 6 oz"};
  CHECK(write_text(sheet, {40, true, 0}) ==
        "Lamb leg                  9 October 2027\n"
        "for 84 portions of 6 oz\n"
        "========================================\n\n");
  sheet.title = "Lamb leg with a garlic paste";
  CHECK(write_text(sheet, {40, true, 0}).starts_with("Lamb leg with a garlic paste\n9 October"));
}

TEST_CASE("facts that are all figures stand in line on the right, others on the left") {
  Facts facts{"yield", "Yield", {}};
  facts.add("purchased", "As purchased", figure(100, "100", "lb"));
  facts.add("served", "Served", figure(fraction(63, 2), "31.5", "lb"));
  CHECK(with_block(facts) == R"(
Yield
=====
As purchased    100 lb
Served         31.5 lb
)");
  facts.add("source", "Source", words("the cook's own test, ten legs"));
  CHECK(with_block(facts) == R"(
Yield
=====
As purchased   100 lb
Served         31.5 lb
Source         the cook's own test, ten
               legs
)");
}

TEST_CASE("steps are numbered, with what they use in line below") {
  Steps steps{"method", "", {}};
  steps.steps.push_back({"Rub all over; refrigerate.",
                         words("12 h to 48 h"),
                         {{figure(80, "80", "cloves"), "garlic"}, {words("2 cups"), "oil"}}});
  steps.steps.push_back({"Roast.", Cell{}, {{Cell{}, "no amount"}}});
  CHECK(with_block(steps) == R"(
1. Rub all over; refrigerate.
   (12 h to 48 h)
     80 cloves  garlic
        2 cups  oil

2. Roast.
     no amount

)");
}

TEST_CASE("metric amounts of a step stand in line beside the others") {
  Steps steps{"method", "", {}};
  steps.steps.push_back({"Rub.",
                         Cell{},
                         {{words("8 oz"), "garlic", words("225 g")},
                          {words("2 leaves"), "bay, the large ones of the garden"}}});
  CHECK(with_block(steps) == R"(
1. Rub.
         8 oz  225 g  garlic
     2 leaves         bay, the large
                      ones of the garden

)");
}

TEST_CASE("a box is drawn in a frame") {
  const Box box{"allergens", "ALLERGENS", {"milk (butter), mustard"}};
  CHECK(with_block(box) == R"(
+======================================+
| ALLERGENS                            |
|                                      |
| milk (butter), mustard               |
+======================================+

)");
  CHECK(with_block(box, false).find("\u250F\u2501\u2501") != std::string::npos);
}

TEST_CASE("bars are as long as their shares of the longest") {
  Bars bars{"ladder", "", {}};
  bars.bars.push_back({"purchased", "purchased", 1, figure(10, "10", "lb"), words("100 %")});
  bars.bars.push_back({"served", "served", fraction(1, 2), figure(5, "5", "lb"), words("50 %")});
  bars.bars.push_back({"none", "none", 0, figure(0, "0", "lb"), words("0 %")});
  CHECK(with_block(bars) == R"(
purchased  ###############  10 lb  100 %
served     ########.......   5 lb   50 %
none       ...............   0 lb    0 %
)");
}

TEST_CASE("grain that takes up water has the longest bar last") {
  Bars bars{"ladder", "", {}};
  bars.bars.push_back({"dry", "dry", 1, words("1 lb")});
  bars.bars.push_back({"cooked", "cooked", 3, words("3 lb")});
  const std::string text = with_block(bars);
  CHECK(text.find("cooked  ##########################  3 lb") != std::string::npos);
  CHECK(text.find("dry     #########.................  1 lb") != std::string::npos);
}

TEST_CASE("signatures leave room for a hand") {
  CHECK(with_block(Signatures{"signatures", {"For the client", "For the caterer"}}) ==
        "\n\n\n"
        "__________________    __________________\n"
        "For the client        For the caterer\n");
}

TEST_CASE("hostile data can't leave its line or turn it") {
  const std::string text =
      with_block(Paragraphs{"notes", "", {"one\ntwo\x1B[2J \u202Ethree \xFF"}}, false);
  CHECK(text == "\none two\\x1b[2J \\u202ethree \\xff\n");
}

TEST_CASE("a part begins under a rule across the page") {
  CHECK(with_block(Part{"jus", "Jus"}) == "\nJus\n========================================\n");
}
