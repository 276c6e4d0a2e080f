// SPDX-License-Identifier: MIT
// Every slip that students make: the number that comes of it, worked out here by hand, is answered
// and has to be named.

#include "platewright/worksheet/check_answers.hpp"
#include "platewright/worksheet/cooking_loss_working.hpp"
#include "platewright/worksheet/trim_working.hpp"
#include "support/answers.hpp"
#include "support/catch.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// 15 lb 8 oz at 6.00 (93.00), labour 0.40 (6.20), credits 9.00 and 0.60: 89.60 for 10 lb.
TrimTestResult bone_in_shoulder() {
  return work_out(TrimTest{"shoulder",
                           pounds(15, 8),
                           per_pound("6.00"),
                           per_pound("0.40"),
                           {TrimPart::usable("shoulder", pounds(10)),
                            TrimPart::by_product("stew", pounds(1, 8), per_pound("6.00")),
                            TrimPart::by_product("fat", pounds(0, 12), per_pound("0.80")),
                            TrimPart::waste("bone", pounds(3, 4))},
                           ounces(6)});
}

/// 10 lb oven-ready, 7 lb 8 oz cooked, 6 lb saleable; 99.20 paid.
CookingLossResult roasted(CostBase base) {
  const TrimTestResult trim = bone_in_shoulder();
  return work_out(CookingLossTest{"shoulder", trim.usable, TrimmedCost::from(trim, base),
                                  trim.purchase_price, pounds(7, 8), pounds(1, 8), std::nullopt,
                                  ounces(5)});
}

MarkedAnswer marked_in(const Working& working, const Answer& answer) {
  const auto marked = check_answers(working, {answer});
  REQUIRE(marked.size() == 1);
  return marked.front();
}
MarkedAnswer in_trim(const Answer& answer) {
  return marked_in(working_of(bone_in_shoulder(), WeighedIn::pounds, per_pound("7.00")), answer);
}
MarkedAnswer in_cooking(const Answer& answer, CostBase base = CostBase::invoice) {
  const TrimTestResult trim = bone_in_shoulder();
  return marked_in(working_of(roasted(base), WeighedIn::pounds, per_pound("7.00"), &trim), answer);
}

}  // namespace

TEST_CASE("the price as purchased times the yield is named") {
  // 6.00 x 10 / 15.5
  CHECK(names(in_trim(by_pound("cost per lb", "3.87")), "multiplied by the yield"));
  // 7.00 x 10 / 15.5
  CHECK(
      names(in_trim(by_pound("cost per lb at the new price", "4.52")), "multiplied by the yield"));
  // 6.00 x 0.6
  CHECK(names(in_cooking(by_pound("cost per lb", "3.60")), "multiplied by the yield"));
}

TEST_CASE("a portion at the price as purchased is named") {
  CHECK(names(in_trim(sum("portion cost", "2.25")), "costed at the price as purchased"));
  CHECK(names(in_cooking(sum("portion cost", "1.875")), "costed at the price as purchased"));
  // 7.00 x 6 / 16
  CHECK(names(in_trim(sum("portion cost at the new price", "2.625")), "at the new price as"));
}

TEST_CASE("the invoice spread over the usable weight is named") {
  CHECK(names(in_trim(by_pound("cost per lb", "9.30")), "invoice was spread"));
  // 93.00 / 6
  CHECK(names(in_cooking(by_pound("cost per lb", "15.50")), "the invoice alone"));
  CHECK(names(in_trim(by_pound("cost per lb", "6.00")), "as if nothing were lost"));
}

TEST_CASE("labour that was not multiplied by the weight is named at every step") {
  CHECK(names(in_trim(sum("labour", "0.40")), "the labour of one lb"));
  CHECK(names(in_trim(sum("labour", "4.00")), "on the usable weight"));
  CHECK(names(in_trim(sum("total cost", "93.40")), "the labour of one lb"));
  // (93.00 + 0.40 - 9.60) / 10
  CHECK(names(in_trim(by_pound("cost per lb", "8.38")), "the labour of one lb"));
}

TEST_CASE("an answer that was rounded up is told from one that was rounded") {
  // 8.96 / 16 is 0.56; 6.00 x 6/16 x 1.4933 is 3.36; 10 / 15.5 is 64.516 %
  const MarkedAnswer up = in_trim(share("yield", fraction(65, 100), fraction(1, 100)));
  CHECK(up.verdict == Verdict::right_as_rounded);
  const MarkedAnswer tenth = in_trim(share("yield", fraction(646, 1000), fraction(1, 1000)));
  CHECK(tenth.verdict == Verdict::wrong);
  CHECK(tenth.went(Astray::rounded_up));
  CHECK_FALSE(tenth.went(Astray::truncated));
}

TEST_CASE("ounces written behind the point of the pounds are named") {
  // 15.8 x 6.00
  CHECK(names(in_trim(sum("invoice", "94.80")), "15 lb 8 oz was written as 15.8 lb"));
  // 10 / 15.8
  CHECK(names(in_trim(share("yield", printed("0.6329"), printed("0.0001"))), "15.8 lb"));
  // 1.8 + 0.75 + 3.25, and both misread: 1.8 + 0.75 + 3.4
  CHECK(names(in_trim(Answer{"trim", "", pounds(1) * printed("5.80"), pounds(1) / Rational(100)}),
              "1 lb 8 oz was written as 1.8 lb"));
  const MarkedAnswer both =
      in_trim(Answer{"trim", "", pounds(1) * printed("5.95"), pounds(1) / Rational(100)});
  CHECK(names(both, "1 lb 8 oz was written as 1.8 lb, 3 lb 4 oz was written as 3.4 lb"));
  // The result is right and badly written: 5 lb 8 oz.
  CHECK(
      names(in_trim(Answer{"trim", "5.8 lb", pounds(1) * printed("5.8"), pounds(1) / Rational(10)}),
            "5 lb 8 oz was written as 5.8 lb"));
}

TEST_CASE("ten ounces and more take two places where they are misread") {
  const auto read = detail::misread(pounds(15, 10));
  REQUIRE(read);
  CHECK(read->weight == Figure(pounds(1) * printed("15.10")));
  CHECK(read->what == "15 lb 10 oz was written as 15.10 lb");
  CHECK_FALSE(detail::misread(pounds(15)));
  CHECK_FALSE(detail::misread(ounces(6)));
  CHECK_FALSE(detail::misread(pounds(2) + ounces(fraction(1, 2))));
  CHECK_FALSE(detail::misread(money("2.50")));
}

TEST_CASE("the complement of a shrink or a yield is named") {
  CHECK(names(in_cooking(share("shrink", printed("0.75"), printed("0.01"))), "1 - shrink"));
  const MarkedAnswer yield = in_cooking(share("yield", printed("0.40"), printed("0.01")));
  CHECK(names(yield, "1 - yield"));
}

TEST_CASE("a shrink of the weight as purchased, or with the bones in it, is named") {
  // 2.5 / 15.5
  CHECK(names(in_cooking(share("shrink", printed("0.161"), printed("0.001"))), "as purchased"));
  CHECK(names(in_cooking(share("shrink", printed("0.40"), printed("0.01"))), "into the cooking"));
  CHECK(names(in_cooking(Answer{"cooking loss", "4 lb", pounds(4), {}}), "into the cooking loss"));
}

TEST_CASE("a by-product's ounces taken for pounds are named") {
  CHECK(names(in_trim(sum("value of fat", "9.60")), "ounces were taken for pounds"));
  CHECK(names(in_trim(sum("value of stew", "144.00")), "ounces were taken for pounds"));
}

TEST_CASE("an ounce that is a tenth of a pound, or sixteen of them, is named") {
  CHECK(names(in_trim(sum("cost per oz", "143.36")), "multiplied by 16"));
  CHECK(names(in_trim(sum("cost per oz", "0.896")), "divided by 10"));
}

TEST_CASE("a kilogram that is divided or multiplied wrongly is named") {
  const Working working =
      working_of(work_out(TrimTest{"loin",
                                   grams(5000),
                                   per_kilogram("12.00"),
                                   std::nullopt,
                                   {TrimPart::usable("loin", grams(4000)),
                                    TrimPart::by_product("fat", grams(250), per_kilogram("2.00")),
                                    TrimPart::waste("bone", grams(750))},
                                   grams(180)}),
                 WeighedIn::kilograms);
  // 59.50 / 4 = 14.875
  CHECK(names(marked_in(working, sum("cost per 100 g", "148.75")), "multiplied by 10"));
  CHECK(names(marked_in(working, sum("cost per 100 g", "0.149")), "divided by 100"));
  CHECK(names(marked_in(working, sum("value of fat", "500.00")), "grams were taken for kilograms"));
}

TEST_CASE("the price as purchased on the oven-ready weight is named") {
  // 6.00 x 10 / 6
  CHECK(names(in_cooking(by_pound("cost per lb", "10.00")),
              "oven-ready weight was costed at the price as purchased"));
}

TEST_CASE("a difference of prices that was added is named") {
  // 8.96 + 1.00, and 9.96 x 6 / 16
  CHECK(names(in_trim(by_pound("cost per lb at the new price", "9.96")), "difference"));
  CHECK(names(in_trim(sum("portion cost at the new price", "3.735")), "difference"));
}

TEST_CASE("a cost that was rounded before it was multiplied is named") {
  // 99.20 / 6 is 16.5333..; an ounce is 1.0333.., five of 1.03 are 5.15; 16.53 x 5 / 16 is 5.165625
  CHECK(names(in_cooking(sum("portion cost", "5.15")), "rounded cost per oz"));
  CHECK(names(in_cooking(sum("portion cost", "5.1656")), "rounded cost per lb"));
}

TEST_CASE("two slips that give one number are both named") {
  // 2.5 / 10 is 0.25: cut off it is 0.2, and of the 15.5 lb as purchased it is 0.16.
  const MarkedAnswer both = in_cooking(share("shrink", printed("0.2"), printed("0.1")));
  CHECK(both.slips.size() == 2);
  CHECK(both.went(Astray::truncated));
  CHECK(names(both, "of the weight as purchased"));
}

TEST_CASE("an answer is followed on from the figure that the student has in the calculator") {
  const Working working = working_of(bone_in_shoulder(), WeighedIn::pounds, per_pound("7.00"));
  // The credits were left out: 99.20 / 10 x 6 / 16 is 3.72, from 9.9 as written 3.7125.
  for (const char* cost : {"3.72", "3.7125"}) {
    const auto marked =
        check_answers(working, {by_pound("cost per lb", "9.9"), sum("portion cost", cost)});
    REQUIRE(marked.size() == 2);
    CHECK(names(marked[0], "credits left out"));
    CHECK(marked[1].verdict == Verdict::right_from_own);
    CHECK(marked[1].own == std::vector<std::string>{"cost per lb"});
  }
}

TEST_CASE("an answer is followed on over steps that were not answered") {
  const Working working = working_of(bone_in_shoulder(), WeighedIn::pounds);
  // Net cost 99.20 - 9.00, by 10 lb, by 16 ounces, six of them.
  const auto marked =
      check_answers(working, {sum("net cost", "90.20"), sum("portion cost", "3.3825")});
  REQUIRE(marked.size() == 2);
  CHECK(marked[0].verdict == Verdict::wrong);
  CHECK(marked[1].verdict == Verdict::right_from_own);
  CHECK(marked[1].own == std::vector<std::string>{"net cost"});
}

TEST_CASE("a slip made on one's own figures is named with them") {
  const Working working = working_of(bone_in_shoulder(), WeighedIn::pounds);
  // Trim of 5 lb, so 10 lb 8 oz usable; 10.5 / 15.5 is 0.677, cut off.
  const auto marked = check_answers(working, {Answer{"trim", "5 lb", pounds(5), {}},
                                              share("yield", printed("0.67"), printed("0.01"))});
  REQUIRE(marked.size() == 2);
  CHECK(marked[1].went(Astray::truncated));
  CHECK(marked[1].slips.front().own == std::vector<std::string>{"trim"});
}

TEST_CASE("a cooking loss test is followed on from the trim test's own figures") {
  const TrimTestResult trim = bone_in_shoulder();
  OwnFigures own;
  const auto first = check_answers(working_of(trim, WeighedIn::pounds),
                                   {sum("net cost", "99.20"), sum("total cost", "99.2")}, own);
  REQUIRE(first.size() == 2);
  const Working net =
      working_of(roasted(CostBase::net_of_credits), WeighedIn::pounds, std::nullopt, &trim);
  OwnFigures brought = brought_from(own, trim, CostBase::net_of_credits);
  const auto marked = check_answers(net, {by_pound("cost per lb", "16.53")}, brought);
  REQUIRE(marked.size() == 1);
  CHECK(marked[0].verdict == Verdict::right_from_own);
  // The total cost was right, and a test that begins from the invoice goes on from nothing wrong.
  CHECK(brought_from(own, trim, CostBase::invoice).empty());
}
