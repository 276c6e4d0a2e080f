// SPDX-License-Identifier: MIT
// Published sheets with slips in them, read as a student's answers: each slip has to be found.

#include "platewright/worksheet/check_answers.hpp"
#include "platewright/worksheet/cooking_loss_working.hpp"
#include "platewright/worksheet/trim_working.hpp"
#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Answer per_cent(const char* step, const char* number, const char* last_place) {
  return {step, number, printed(number) / 100, printed(last_place) / 100};
}
Answer number(const char* step, const char* written, const char* last_place) {
  return {step, written, printed(written), printed(last_place)};
}
Answer weight(const char* step, const Mass& mass) {
  return {step, "", mass, std::nullopt};
}
Answer by_pound(const char* step, const char* written) {
  return {step, written, per_pound(written), per_pound("0.01")};
}
Answer sum(const char* step, const char* written) {
  return {step, written, money(written), money("0.01")};
}

std::vector<MarkedAnswer> marked(const TrimTest& test, const std::vector<Answer>& answers) {
  return check_answers(working_of(work_out(test), WeighedIn::pounds), answers);
}

}  // namespace

// BCcampus, Basic Kitchen and Food Service Management, chapter 12 (2015, CC BY 4.0) prints 64.51 %
// and 1.42, cut off where 64.516.. and 1.428.. round up. The prices are ours.
TEST_CASE("the figures that the BCcampus text cut off are found to be cut off") {
  const auto salmon =
      marked({"salmon",
              grams(7750),
              per_kilogram("10"),
              std::nullopt,
              {TrimPart::usable_left_over("fillet"), TrimPart::waste("trim", grams(2750))},
              std::nullopt},
             {weight("usable", grams(5000)), per_cent("yield", "64.51", "0.01"),
              number("cost factor", "1.55", "0.01")});
  REQUIRE(salmon.size() == 3);
  CHECK(salmon[0].verdict == Verdict::right);
  CHECK(salmon[1].went(Astray::truncated));
  CHECK(salmon[2].verdict == Verdict::right);

  const auto tenderloin =
      marked({"tenderloin",
              grams(2500),
              per_kilogram("10"),
              std::nullopt,
              {TrimPart::usable_left_over("trimmed"), TrimPart::waste("trim", grams(750))},
              std::nullopt},
             {per_cent("yield", "70", "1"), number("cost factor", "1.42", "0.01")});
  CHECK(tenderloin[0].verdict == Verdict::right);
  CHECK(tenderloin[1].went(Astray::truncated));
}

// The same text prints 400 left of a can of 750 with a trim of 300, and 53.33 % (millilitres there,
// grams here): the parts do not add up, and the percentage goes on from the wrong figure.
TEST_CASE("the can whose parts do not add up goes astray at the usable part") {
  const auto can =
      marked({"tuna",
              grams(750),
              money("1"),
              std::nullopt,
              {TrimPart::usable_left_over("drained"), TrimPart::waste("oil", grams(300))},
              std::nullopt},
             {weight("usable", grams(400)), per_cent("yield", "53.33", "0.01")});
  REQUIRE(can.size() == 2);
  CHECK(can[0].went(Astray::parts_too_little));
  CHECK(can[0].right == Figure(grams(450)));
  CHECK(can[0].difference == Figure(grams(50)));
  CHECK(can[1].verdict == Verdict::right_from_own);
  CHECK(can[1].own == std::vector<std::string>{"usable"});
  CHECK(can[1].right == Figure(fraction(3, 5)));
}

// A class card of a lamb loin prints 5 lb saleable of 5 lb 8 oz with 1 lb of bones and trim, and
// 15.96 a pound on the full invoice of 79.80.
TEST_CASE("the card whose saleable weight is too large goes astray there") {
  const CookingLossResult loin = work_out(
      CookingLossTest{"lamb loin", pounds(6), TrimmedCost::from_invoice(money("79.80")),
                      per_pound("6.65"), pounds(5, 8), pounds(1), std::nullopt, std::nullopt});
  const auto card =
      check_answers(working_of(loin, WeighedIn::pounds),
                    {weight("saleable", pounds(5)), by_pound("cost per lb", "15.96")});
  REQUIRE(card.size() == 2);
  CHECK(card[0].went(Astray::parts_too_much));
  CHECK(card[0].right == Figure(pounds(4, 8)));
  CHECK(card[0].difference == Figure(pounds(0, 8)));
  CHECK(card[1].verdict == Verdict::right_from_own);
  CHECK(card[1].own == std::vector<std::string>{"saleable"});
}

// A purveyor's note prints 9.16 a pound, cut off, and portions from the exact cost.
TEST_CASE("the rib eye's cost per pound is found to be cut off, its portions right") {
  const auto rib_eye = marked(
      {"rib eye",
       pounds(10),
       per_pound("5.50"),
       std::nullopt,
       {TrimPart::usable("rib eye", pounds(6)), TrimPart::cutting_loss_left_over()},
       ounces(6)},
      {per_cent("yield", "60", "1"), by_pound("cost per lb", "9.16"), sum("portion cost", "3.44")});
  REQUIRE(rib_eye.size() == 3);
  CHECK(rib_eye[0].verdict == Verdict::right);
  CHECK(rib_eye[1].went(Astray::truncated));
  CHECK(rib_eye[2].verdict == Verdict::right_as_rounded);
}

// The class card of the lamb loin, as printed: nothing astray.
TEST_CASE("the lamb loin's printed figures are right to the rounding shown") {
  const auto loin =
      marked({"lamb loin",
              pounds(12),
              per_pound("6.65"),
              std::nullopt,
              {TrimPart::by_product("fat", pounds(3), PricePerMass{}),
               TrimPart::by_product("kidneys", pounds(1), per_pound("6.10")),
               TrimPart::by_product("flank", pounds(1, 8), per_pound("4.60")),
               TrimPart::cutting_loss(pounds(0, 8)), TrimPart::usable("loin", pounds(6))},
              ounces(5)},
             {sum("invoice", "79.80"),
              per_cent("share of fat", "25.00", "0.01"),
              per_cent("share of kidneys", "8.33", "0.01"),
              per_cent("share of flank", "12.50", "0.01"),
              per_cent("share of cutting loss", "4.17", "0.01"),
              sum("net cost", "66.80"),
              by_pound("cost per lb", "11.13"),
              sum("cost per oz", "0.70"),
              sum("portion cost", "3.48"),
              number("cost factor", "1.67", "0.01"),
              {"portion cost factor", ".52", Mass::of(printed("0.52"), units::pound),
               Mass::of(printed("0.01"), units::pound)}});
  CHECK(loin.size() == 11);
  for (const MarkedAnswer& answer : loin) {
    INFO(answer.answer.step);
    CHECK(answer.verdict != Verdict::wrong);
  }
}
