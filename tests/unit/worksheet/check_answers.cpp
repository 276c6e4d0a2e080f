// SPDX-License-Identifier: MIT
#include "platewright/worksheet/check_answers.hpp"

#include "platewright/worksheet/trim_working.hpp"
#include "support/answers.hpp"
#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// 30 lb at 5.00 with labour: 20 lb usable, credits 12.00 + 8.00.
Working leg() {
  return working_of(work_out(TrimTest{"leg",
                                      pounds(30),
                                      per_pound("5.00"),
                                      per_pound("0.50"),
                                      {TrimPart::usable("leg", pounds(20)),
                                       TrimPart::by_product("stew", pounds(3), per_pound("4.00")),
                                       TrimPart::by_product("ground", pounds(4), per_pound("2.00")),
                                       TrimPart::waste("bone", pounds(3))},
                                      ounces(6)}),
                    WeighedIn::pounds, per_pound("6.00"));
}

MarkedAnswer mark(const Answer& answer, std::vector<Answer> others = {}) {
  others.push_back(answer);
  for (const MarkedAnswer& marked : check_answers(leg(), others)) {
    if (marked.answer.step == answer.step) return marked;
  }
  FAIL("no answer to " << answer.step);
  return {};
}

}  // namespace

TEST_CASE("an answer is right, right to the rounding shown, or wrong with the right figure") {
  CHECK(mark(sum("net cost", "145")).verdict == Verdict::right);
  CHECK(mark(by_pound("cost per lb", "7.25")).verdict == Verdict::right);
  const MarkedAnswer rounded = mark(share("yield", fraction(667, 1000), fraction(1, 1000)));
  CHECK(rounded.verdict == Verdict::right_as_rounded);
  CHECK(rounded.slips.empty());
  const MarkedAnswer wrong = mark(sum("net cost", "146"));
  CHECK(wrong.verdict == Verdict::wrong);
  CHECK(wrong.right == Figure(money("145")));
  CHECK(wrong.slips.empty());
}

TEST_CASE("an answer without decimals has to be exact") {
  CHECK(mark(sum("portion cost", "3")).verdict == Verdict::wrong);
  CHECK(mark(sum("portion cost", "2.72")).verdict == Verdict::right_as_rounded);
  CHECK(mark(sum("portion cost", "2.71875")).verdict == Verdict::right);
}

TEST_CASE("an answer that was cut off is told from one that was rounded") {
  const MarkedAnswer cut = mark(sum("portion cost", "2.71"));
  CHECK(cut.verdict == Verdict::wrong);
  CHECK(cut.went(Astray::truncated));
  CHECK(mark(share("yield", fraction(66, 100), fraction(1, 100))).went(Astray::truncated));
}

TEST_CASE("a credit that was dropped is named") {
  const MarkedAnswer all = mark(sum("net cost", "165.00"));
  CHECK(all.went(Astray::left_out));
  CHECK(names(all, "credits"));
  const MarkedAnswer one = mark(sum("credits", "12.00"));
  CHECK(one.went(Astray::left_out));
  CHECK(names(one, "value of ground"));
  const MarkedAnswer later = mark(by_pound("cost per lb", "8.25"));
  CHECK(later.went(Astray::known_slip));
  CHECK(names(later, "credits left out"));
  CHECK(mark(sum("net cost", "185.00")).went(Astray::added));
}

TEST_CASE("labour that was forgotten, or added after the yield, is named") {
  CHECK(mark(sum("total cost", "150.00")).went(Astray::left_out));
  CHECK(names(mark(by_pound("cost per lb", "6.50")), "labour left out"));
  CHECK(names(mark(by_pound("cost per lb", "7.00")), "after the yield"));
}

TEST_CASE("a wrong base for the percentage is named") {
  const MarkedAnswer usable = mark(share("share of bone", fraction(15, 100), fraction(1, 100)));
  CHECK(usable.went(Astray::known_slip));
  CHECK(names(usable, "of the usable weight"));
  const MarkedAnswer trim = mark(share("yield", fraction(33, 100), fraction(1, 100)));
  CHECK(names(trim, "the share of the trim"));
  CHECK(names(mark(by_pound("cost per lb", "4.83")), "as purchased"));
  CHECK(mark(share("yield", fraction(3, 2), fraction(1, 10))).went(Astray::upside_down));
  CHECK(mark(share("yield", fraction(667, 10), fraction(1, 10))).went(Astray::no_percent));
}

TEST_CASE("a portion in the wrong unit is named") {
  CHECK(names(mark(sum("portion cost", "43.50")), "taken for pounds"));
  CHECK(names(mark(sum("portion cost", "4.35")), "tenths"));
  // 7.25 / 16 is 0.453: six times the rounded 0.45 is 2.70.
  CHECK(names(mark(sum("portion cost", "2.70")), "rounded cost per oz"));
}

TEST_CASE("a slip on top of an earlier one is named with the figure that it was worked on from") {
  const MarkedAnswer marked = mark(sum("portion cost", "48.00"), {by_pound("cost per lb", "8.00")});
  CHECK(marked.went(Astray::known_slip));
  CHECK(names(marked, "taken for pounds"));
  CHECK(marked.slips.front().own == std::vector<std::string>{"cost per lb"});
}

TEST_CASE("an answer that is right from an earlier wrong one says where to look") {
  const MarkedAnswer marked = mark(by_pound("cost per lb", "7.65"), {sum("net cost", "153.00")});
  CHECK(marked.verdict == Verdict::right_from_own);
  CHECK(marked.slips.empty());
  CHECK(marked.own == std::vector<std::string>{"net cost"});
}

TEST_CASE("a usable weight that does not go with the trim says how far the parts are out") {
  const MarkedAnswer more = mark(Answer{"usable", "21 lb", pounds(21), {}});
  CHECK(more.went(Astray::parts_too_much));
  CHECK(more.difference == Figure(pounds(1)));
  const MarkedAnswer less = mark(Answer{"usable", "18 lb", pounds(18), {}});
  CHECK(less.went(Astray::parts_too_little));
  CHECK(less.difference == Figure(pounds(2)));
}

TEST_CASE("a factor that forgets credits and labour is named") {
  const MarkedAnswer factor = mark(share("cost factor", printed("1.50"), fraction(1, 100)));
  CHECK(names(factor, "1 / yield"));
  CHECK(names(mark(by_pound("cost per lb at the new price", "9.00")), "divided by the yield"));
}

TEST_CASE("answers come in the order of the working, whatever order they were written in") {
  const auto marked = check_answers(
      leg(), {by_pound("cost per lb", "7.25"), sum("invoice", "150"), sum("no such step", "1")});
  REQUIRE(marked.size() == 2);
  CHECK(marked[0].answer.step == "invoice");
  CHECK(marked[1].answer.step == "cost per lb");
}
