// SPDX-License-Identifier: MIT
// Vessels as cooks name them.

#include "platewright/files/read_vessel.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::the_tables;

namespace {

RecipeVessel vessel(const char* text) {
  return read_vessel(text, "leg", the_tables(), MeasuringSystem::us);
}

std::string refused(const char* text) {
  return test::problem_of([&] { vessel(text); }).id;
}

}  // namespace

// Usable is what a cook fills: 420 fl oz of the maker's 13.5 qt.
TEST_CASE("a vessel of the table holds what is usable of it") {
  const RecipeVessel pan = vessel("full-size hotel pan, 4 in, holds 2 legs");
  CHECK(pan.name == "full-size hotel pan, 4 in");
  CHECK(pan.holds == Rational(2));
  CHECK(pan.volume == Volume::of(420, units::us_fluid_ounce));
  CHECK_FALSE(pan.source.empty());
}

TEST_CASE("a vessel of one's own says what it holds") {
  const RecipeVessel tub = vessel("tub of 12 qt, holds 1 leg");
  CHECK(tub.name == "tub");
  CHECK(tub.volume == Volume::of(12, units::us_quart));
  CHECK(tub.holds == Rational(1));
  CHECK_FALSE(vessel("tub of 12 qt").holds);
}

TEST_CASE("a name alone is enough to count vessels by") {
  const RecipeVessel box = vessel("box of tricks, holds 3");
  CHECK(box.name == "box of tricks");
  CHECK_FALSE(box.volume);
  CHECK(box.holds == Rational(3));
}

TEST_CASE("of a whole capacity a cook fills nine tenths, of what is said to be held all") {
  CHECK(vessel("kettle of 80 L").fill == usual_fill());
  CHECK(filled_volume(vessel("kettle of 80 L")) == Volume::of(72, units::litre));
  const RecipeVessel kettle = vessel("kettle, holds 72 L");
  CHECK(kettle.volume == Volume::of(72, units::litre));
  CHECK(kettle.fill == 1);
  CHECK_FALSE(kettle.holds);
}

TEST_CASE("a tray has a bottom, by its name or by its sides") {
  const PanBottom full{Length::of(18, units::inch), Length::of(26, units::inch)};
  for (const char* name : {"full-size sheet pan", "full sheet", "full size sheet pan", "sheet pan",
                           "tray of 18 x 26 in", "tray of 18 x 26 x 1 in"}) {
    INFO(name);
    CHECK(vessel(name).bottom == full);
    CHECK_FALSE(vessel(name).volume);
  }
  CHECK(area_of(*vessel("half sheet").bottom) == area_of(full) / 2);
  CHECK(area_of(*vessel("tray of 60 x 40 cm").bottom) == area_of(*vessel("baker's tray").bottom));
}

TEST_CASE("a pan of the table is the same in every book") {
  const auto in = [](MeasuringSystem system) {
    return read_vessel("full-size hotel pan, 4 in", "leg", the_tables(), system).volume;
  };
  CHECK(in(MeasuringSystem::metric) == in(MeasuringSystem::us));
  CHECK(in(MeasuringSystem::imperial) == in(MeasuringSystem::us));
}

TEST_CASE("what is no vessel is refused") {
  CHECK(refused("tub of 12 qt, holds 3 chairs") == "vessel-malformed");
  CHECK(refused(" of 12 qt") == "vessel-malformed");
  CHECK(refused("tub of 12 lb") == "wrong-dimension");
  CHECK(refused("tub of 0 qt") == "number-not-positive");
  CHECK(refused("tub of 12 qt, holds 0 legs") == "number-not-positive");
}
