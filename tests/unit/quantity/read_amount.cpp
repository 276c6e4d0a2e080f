// SPDX-License-Identifier: MIT
// Amounts as cooks write them.

#include "platewright/quantity/read_amount.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::problem_of;
using platewright::test::unit_table;

namespace {

LineAmount line(std::string_view text) {
  return read_line_amount(text, unit_table(), MeasuringSystem::us);
}

std::string read(std::string_view text) {
  const LineAmount amount = line(text);
  if (amount.to_taste()) return "to taste";
  std::string out = amount_text(*amount.low());
  if (amount.high()) out += " .. " + amount_text(*amount.high());
  return out;
}

std::string id_of(std::string_view text) {
  return problem_of([&] { line(text); }).id;
}

}  // namespace

TEST_CASE("one number and one unit") {
  CHECK(read("2 1/4 cups") == "2 1/4 cups");
  CHECK(read("1\u00BD cups") == "1 1/2 cups");
  CHECK(read("1 fl. oz.") == "1 fl oz");
  CHECK(read("  500 g ") == "500 g");
  CHECK(read("500g") == "500 g");
  CHECK(read("1 US liquid pint") == "1 pt");
}

TEST_CASE("a number alone counts pieces") {
  CHECK(line("3").low()->unit.name() == "each");
  CHECK(read("8 cloves") == "8 cloves");
}

TEST_CASE("compound amounts are summed in the first unit") {
  CHECK(line("2 lb 3 oz").low()->number == fraction(35, 16));
  CHECK(line("2lb3oz").low()->number == fraction(35, 16));
  CHECK(line("1 qt 1 1/4 cups").low()->number == fraction(21, 16));
  CHECK(line("1 cup plus 2 tbsp").low()->number == fraction(9, 8));
  CHECK(line("1 cup + 2 tbsp").low()->number == fraction(9, 8));
  CHECK(line("1 cup and 2 tbsp").low()->number == fraction(9, 8));
  CHECK(line("1 gal 2 qt 1 pt 1 cup").low()->number == fraction(27, 16));
  CHECK(line("1 h 30 min").low()->canonical() == 5400);
}

TEST_CASE("a range stays a range") {
  CHECK(read("2-3 tbsp") == "2 tbsp .. 3 tbsp");
  CHECK(read("2 - 3 tbsp") == "2 tbsp .. 3 tbsp");
  CHECK(read("2 \u2013 3 tbsp") == "2 tbsp .. 3 tbsp");
  CHECK(read("2 to 3 tbsp") == "2 tbsp .. 3 tbsp");
  CHECK(read("1/2-3/4 cup") == "1/2 cup .. 3/4 cup");
  CHECK(read("1 1/2-2 cups") == "1 1/2 cups .. 2 cups");
  CHECK(read("2-3") == "2 each .. 3 each");
}

TEST_CASE("a range may say its unit twice, or have two, or parts") {
  CHECK(read("2 tbsp to 3 tbsp") == "2 tbsp .. 3 tbsp");
  CHECK(read("2 tbsp - 3 tbsp") == "2 tbsp .. 3 tbsp");
  CHECK(read("2 tbsp to 1/4 cup") == "2 tbsp .. 4 tbsp");
  CHECK(read("1 cup + 2 tbsp to 1 1/2 cups") == "1 1/8 cups .. 1 1/2 cups");
  CHECK(id_of("1/4 cup to 2 tbsp") == "amount-malformed");
  CHECK(id_of("2 tbsp to 3 lb") == "units-do-not-mix");
  CHECK(id_of("2 tbsp to") == "amount-malformed");
  CHECK(id_of("2 tbsp to 3 tbsp to 4 tbsp") == "amount-malformed");
}

TEST_CASE("a hyphen before a fraction below 1 is a mixed number") {
  CHECK(read("2-3/4 cups") == "2 3/4 cups");
}

TEST_CASE("a range goes from less to more") {
  CHECK(id_of("3-2 tbsp") == "amount-malformed");
  CHECK(id_of("2-2 tbsp") == "amount-malformed");
}

TEST_CASE("to taste") {
  CHECK(read("to taste") == "to taste");
  CHECK(read("To taste") == "to taste");
}

TEST_CASE("parts that do not mix") {
  const Problem problem = problem_of([] { line("2 oz 1 fl oz"); });
  CHECK(problem.id == "units-do-not-mix");
  CHECK(problem.found == "2 oz is weight and 1 fl oz is capacity");
  CHECK(id_of("1 lb 2 cloves") == "units-do-not-mix");
  CHECK(id_of("2 cloves 1 sprig") == "units-do-not-mix");
}

TEST_CASE("units that are not known or have two meanings") {
  CHECK(id_of("2 glugs") == "unit-unknown");
  CHECK(id_of("2 T") == "unit-ambiguous");
  CHECK(id_of("2 t.") == "unit-ambiguous");
  CHECK(id_of("1 t") == "unit-ambiguous");
  CHECK(problem_of([] { line("2 large glugs of oil"); }).found ==
        "the unit \"large glugs of oil\"");
}

TEST_CASE("what follows the amount") {
  CHECK(id_of("2-3 lb 4 oz") == "amount-malformed");
  CHECK(id_of("2 lb about") == "amount-malformed");
  CHECK(id_of("1 cup plus") == "amount-malformed");
  CHECK(problem_of([] { line("2 cups sifted"); }).found ==
        "\"2 cups sifted\" (\"sifted\" follows the amount)");
  CHECK(id_of("2 cups, sifted") == "unit-unknown");
}

TEST_CASE("numbers that can't be read") {
  CHECK(id_of("1,5 kg") == "number-comma");
  CHECK(id_of("1/0 cup") == "number-zero-denominator");
  CHECK(id_of("1e999 g") == "number-exponent");
  CHECK(id_of("0x10 g") == "number-malformed");
  CHECK(id_of("NaN") == "number-missing");
  CHECK(id_of("a cup") == "number-missing");
  CHECK(id_of("-2 cups") == "number-signed");
}

// A trade size of can or scoop is part of the unit's name, not a number of its own.
TEST_CASE("sizes that are written as a number") {
  CHECK(line("1 #10 scoop").low()->unit.name() == "No. 10 scoop");
  CHECK(line("2 No. 8 scoops").low()->unit.name() == "No. 8 scoop");
  CHECK(id_of("1 #10") == "units-do-not-mix");
  CHECK(id_of("#10 scoop") == "number-missing");
}

TEST_CASE("a text of any length is answered, shortened in the message") {
  const Problem problem = problem_of([] { line("1 " + std::string(100000, 'x')); });
  CHECK(problem.id == "unit-unknown");
  CHECK(problem.found.size() < 100);
  CHECK(id_of("1 " + std::string(100000, ' ') + "cup").empty());
}

TEST_CASE("where one amount is needed, ranges and tastes are refused") {
  const auto id = [](std::string_view text) {
    return problem_of([&] { read_amount(text, unit_table(), MeasuringSystem::us); }).id;
  };
  CHECK(id("2-3 cups") == "amount-malformed");
  CHECK(id("to taste") == "amount-malformed");
  CHECK(id("2 cups").empty());
}

TEST_CASE("an amount becomes the quantity of its own dimension and no other") {
  CHECK(to_mass(*line("1 lb").low()) == Mass::of(1, units::pound));
  CHECK(to_volume(*line("1 cup").low()) == Volume::of(1, units::us_cup));
  CHECK(to_duration(*line("2 h").low()) == Duration::of(2, units::hour));
  CHECK(to_pieces(*line("1 dozen").low()) == Pieces::of(12, units::each));
  CHECK(problem_of([] { to_mass(*line("1 fl oz").low()); }).id == "wrong-dimension");
}
