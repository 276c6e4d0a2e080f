// SPDX-License-Identifier: MIT
// Trim tests against published sheets. Each case asserts the exact figure; a comment says what the
// source prints and why it differs.

#include "platewright/worksheet/trim_test.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

TrimTest sheet(std::string cut, const Mass& purchased, std::variant<PricePerMass, Money> price,
               std::vector<TrimPart> parts) {
  return {std::move(cut), purchased,        std::move(price),
          std::nullopt,   std::move(parts), std::nullopt};
}

}  // namespace

// BCcampus, Basic Kitchen and Food Service Management, chapter 12 (2015, CC BY 4.0). The price is
// ours: the source has none.
TEST_CASE("salmon and tenderloin of the BCcampus text") {
  const TrimTestResult salmon = work_out(
      sheet("salmon", grams(7750), per_kilogram("10"),
            {TrimPart::usable("fillet", grams(5000)), TrimPart::waste("trim", grams(2750))}));
  CHECK(salmon.yield == fraction(20, 31));
  // It prints 64.51 %: cut off, not rounded.
  CHECK(as_decimal(salmon.yield * 100, 2, Rounding::down) == "64.51");
  CHECK(salmon.cost_factor == printed("1.55"));

  const TrimTestResult tenderloin = work_out(
      sheet("tenderloin", grams(2500), per_kilogram("10"),
            {TrimPart::usable("trimmed", grams(1750)), TrimPart::waste("trim", grams(750))}));
  CHECK(tenderloin.yield == fraction(7, 10));
  CHECK(tenderloin.cost_factor == fraction(10, 7));
  // It prints 1.42: cut off, not rounded.
  CHECK(as_decimal(tenderloin.cost_factor, 2, Rounding::down) == "1.42");
}

// The same text prints a can of 750 with a trim of 300 and 400 left (in millilitres; the numbers
// are taken as grams here) and a yield of 53.33 %: 50 are missing, and so is a yield.
TEST_CASE("the can whose parts do not add up is reported") {
  const Problem problem = problem_of([] {
    work_out(sheet("tuna", grams(750), money("1"),
                   {TrimPart::usable("drained", grams(400)), TrimPart::waste("oil", grams(300))}));
  });
  CHECK(problem.id == "parts-unaccounted");
  CHECK(problem.found.find(" 50 g (") != std::string::npos);
}

// Trade Calculations class sheet (2012): prints 7.24 a kilogram, the same by 5.50 / 0.76.
TEST_CASE("5 kg at 5.50 with 3.8 kg usable") {
  const TrimTestResult result = work_out(
      sheet("class sheet", grams(5000), per_kilogram("5.50"),
            {TrimPart::usable("usable", grams(3800)), TrimPart::waste("trim", grams(1200))}));
  CHECK(result.invoice == money("27.50"));
  CHECK(result.yield == printed("0.76"));
  CHECK(for_a_kilogram(result.cost_per_weight) == printed("5.50") / printed("0.76"));
  CHECK(as_decimal(for_a_kilogram(result.cost_per_weight), 2) == "7.24");
}

// Beeton's joint tables print 15 1/4 and 11 pence a usable pound; the exact figures are 15.33
// and 11.09.
TEST_CASE("sirloin and silverside of Beeton's tables, in pence") {
  const auto pence = [](const Mass& raw, const Mass& usable, const char* price) {
    return for_a_pound(
        work_out(sheet("joint", raw, per_pound(price),
                       {TrimPart::usable("usable", usable), TrimPart::cutting_loss_left_over()}))
            .cost_per_weight);
  };
  CHECK(pence(pounds(11, 8), pounds(8, 4), "11") == fraction(46, 3));
  CHECK(pence(pounds(6, 5), pounds(5, 2), "9") == fraction(909, 82));
}

// A beef breed association's cutting sheet (2013).
TEST_CASE("tenderloin with two credits") {
  const TrimTestResult result =
      work_out(sheet("tenderloin", pounds(12), per_pound("10"),
                     {TrimPart::by_product("ground", pounds(3), per_pound("2")),
                      TrimPart::by_product("steak pieces", pounds(5), per_pound("6")),
                      TrimPart::usable("tenderloin", pounds(4))}));
  CHECK(result.total_cost == money("120"));
  CHECK(result.credits == money("36"));
  CHECK(result.net_cost == money("84"));
  CHECK(for_a_pound(result.cost_per_weight) == 21);
}

// A class card of a lamb loin.
TEST_CASE("lamb loin of the class card") {
  TrimTest test =
      sheet("lamb loin", pounds(12), per_pound("6.65"),
            {TrimPart::by_product("fat", pounds(3), PricePerMass{}),
             TrimPart::by_product("kidneys", pounds(1), per_pound("6.10")),
             TrimPart::by_product("flank", pounds(1, 8), per_pound("4.60")),
             TrimPart::cutting_loss(pounds(0, 8)), TrimPart::usable("loin", pounds(6))});
  test.portion = ounces(5);
  const TrimTestResult result = work_out(test);
  CHECK(result.invoice == money("79.80"));
  CHECK(as_decimal(result.lines[0].share * 100, 2) == "25.00");
  CHECK(as_decimal(result.lines[1].share * 100, 2) == "8.33");
  CHECK(as_decimal(result.lines[2].share * 100, 2) == "12.50");
  CHECK(as_decimal(result.lines[3].share * 100, 2) == "4.17");
  CHECK(result.net_cost == money("66.80"));
  CHECK(as_decimal(for_a_pound(result.cost_per_weight), 2) == "11.13");
  CHECK(as_decimal(for_a_pound(result.cost_per_weight) / 16, 2) == "0.70");
  CHECK(as_decimal(amount_of(result.portion->cost), 2) == "3.48");
  CHECK(as_decimal(result.cost_factor, 2) == "1.67");
  CHECK(as_decimal(result.portion->factor.in(units::pound), 2) == "0.52");
}

// A textbook exercise on a leg of veal prints the values of the parts and a trim of 12 lb; the rest
// is worked out from its own numbers.
TEST_CASE("leg of veal of the textbook exercise") {
  const TrimTestResult result =
      work_out(sheet("leg of veal", pounds(30), per_pound("5.00"),
                     {TrimPart::by_product("fat", pounds(2, 8), per_pound("0.12")),
                      TrimPart::by_product("bone", pounds(3, 5), per_pound("0.38")),
                      TrimPart::by_product("ground veal", pounds(2, 2), per_pound("4.89")),
                      TrimPart::by_product("stew veal", pounds(3), per_pound("5.29")),
                      TrimPart::waste("unusable", pounds(0, 14)),
                      TrimPart::cutting_loss(pounds(0, 3)), TrimPart::usable("veal", pounds(18))}));
  CHECK(result.lines[0].value == money("0.30"));
  CHECK(as_decimal(amount_of(result.lines[1].value), 2) == "1.26");
  CHECK(as_decimal(amount_of(result.lines[2].value), 2) == "10.39");
  CHECK(result.lines[3].value == money("15.87"));
  CHECK(result.trim == pounds(12));
  CHECK(result.credits == money("27.82"));
  CHECK(result.net_cost == money("122.18"));
  CHECK(as_decimal(for_a_pound(result.cost_per_weight), 2) == "6.79");
  CHECK(as_decimal(result.cost_factor, 2) == "1.36");
}

// A purveyor's note: labour enters before the yield, 3.50 / 0.60 = 5.83.
TEST_CASE("inside round with labour") {
  TrimTest test = sheet("inside round", pounds(20), per_pound("2.50"),
                        {TrimPart::waste("fat", pounds(4)), TrimPart::waste("cap", pounds(4)),
                         TrimPart::usable("round", pounds(12))});
  test.labour = per_pound("1.00");
  const TrimTestResult result = work_out(test);
  CHECK(result.yield == fraction(3, 5));
  CHECK(for_a_pound(result.cost_per_weight) == fraction(35, 6));
}

// The same note prints 9.16 a pound, cut off, and the portions below, which come from the exact
// cost.
TEST_CASE("rib eye in portions of three sizes") {
  TrimTest test =
      sheet("rib eye", pounds(10), per_pound("5.50"),
            {TrimPart::usable("rib eye", pounds(6)), TrimPart::cutting_loss_left_over()});
  const auto portion = [&](int size) {
    test.portion = ounces(size);
    return as_decimal(amount_of(work_out(test).portion->cost), 2);
  };
  CHECK(for_a_pound(work_out(test).cost_per_weight) == fraction(55, 6));
  CHECK(portion(6) == "3.44");
  CHECK(portion(8) == "4.58");
  CHECK(portion(14) == "8.02");
}
