// SPDX-License-Identifier: MIT
// Typed quantities from text and as text; sums and ratios of them.

#include "platewright/quantity/typed_text.hpp"

#include <array>
#include <list>
#include <vector>

#include "platewright/quantity/literals.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/tables.hpp"

using namespace platewright;
using namespace platewright::literals;
using platewright::test::problem_of;
using platewright::test::unit_table;

namespace {}

TEST_CASE("typed quantities are read from what a cook writes") {
  CHECK(read<Mass>("2 lb 3 oz", unit_table()) == 2_lb + 3_oz);
  CHECK(read<Volume>("1 cup plus 2 tbsp", unit_table()) == 1_cup + 2_tbsp);
  CHECK(read<Pieces>("1 dozen", unit_table()) == 12_each);
  CHECK(read<Length>("2 ft", unit_table()) == 24_in);
  CHECK(read<Area>("2 sq in", unit_table()) == 2_in * 1_in);
  CHECK(read<Duration>("1 h 30 min", unit_table()) == 90_min);
  CHECK(read<Volume>("1 pint", unit_table(), MeasuringSystem::imperial) ==
        Volume::of(1, units::imperial_pint));
}

TEST_CASE("text of another dimension is refused where it is read") {
  CHECK(problem_of([] { read<Mass>("2 cups", unit_table()); }).id == "wrong-dimension");
  CHECK(problem_of([] { read<Volume>("2 lb 3 fl oz", unit_table()); }).id == "units-do-not-mix");
  CHECK(problem_of([] { read<Mass>("to taste", unit_table()); }).id == "amount-malformed");
}

TEST_CASE("typed quantities are written exactly, or rounded by name") {
  CHECK(text(2_lb + 3_oz, units::pound) == "2 3/16 pound");
  CHECK(text(2_lb + 3_oz, units::pound, 2) == "2.19 pound");
  CHECK(text(2_lb + 3_oz, units::pound, 1, Rounding::down) == "2.1 pound");
  CHECK(text(approximately(1_lb), units::gram, 3) == "453.592 gram");
}

TEST_CASE("what is written is read back as it was") {
  const Mass mass = 17_g + 5_oz;
  CHECK(read<Mass>(text(mass * fraction(1, 7), units::ounce), unit_table()) ==
        mass * fraction(1, 7));
}

TEST_CASE("ranges of quantities are summed, and two of a kind make a ratio") {
  CHECK(sum_of(std::vector<Mass>{1_lb, 2_oz, 3_g}) == 1_lb + 2_oz + 3_g);
  CHECK(sum_of(std::array<Volume, 2>{1_cup, 1_cup}) == 1_pt);
  CHECK(sum_of(std::list<Mass>{}) == Mass());
  CHECK(1_lb / 1_oz == 16);
  CHECK(1_gal / 1_tsp == 768);
}
