// SPDX-License-Identifier: MIT
// What cooks expect, against the built-in table. Common practice, no source: each rule is loose,
// and so is its check.

#include "platewright/book/tables.hpp"
#include "platewright/yield/portion_size.hpp"
#include "platewright/yield/portions.hpp"
#include "platewright/yield/yield_table.hpp"
#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

const Ladder& ladder_of_cut(const char* name) {
  static const YieldTable table(built_in_yields());
  return table.cut(name).ladder;
}

}  // namespace

TEST_CASE("seven pounds of bone-in beef rib serve eight, common practice, no source") {
  const Ladder& rib = ladder_of_cut("beef rib roast, bone-in, lip-on, roasted");
  // A hearty portion of meat without bone.
  CHECK(portions_from(rib, pounds(7), ounces(8)).portions >= 8);
  CHECK(portions_from(rib, pounds(7), ounces(6)).portions >= 8);
  const Ladder& careful =
      ladder_of_cut("beef rib, whole (ribs 6-12), bone-in, roasted, whole chain");
  CHECK(portions_from(careful, pounds(7), ounces(8)).portions >= 8);
}

TEST_CASE("one bone of a pork rib rack is a serving, common practice, no source") {
  const Ladder& rib = ladder_of_cut("pork rib roast, bone-in, roasted");
  // A rack of ten bones weighs about 7 lb; the bone stays on, so that only the oven takes weight.
  const Mass rack = pounds(7);
  const Mass served = rib.down(rack, Stage::purchased, Stage::cooked);
  const Mass one_bone = served / 10;
  CHECK(one_bone >= ounces(6));
  CHECK(one_bone <= ounces(12));
  const Mass portion = portion_at_plate(RibPortion{1, 10}, rib, rack);
  CHECK(portion <= one_bone);
  CHECK(portions_from(rib, rack, portion).portions == 10);
}

TEST_CASE("two racks of ten bones serve 14 to 20, common practice, no source") {
  const Ladder& rib = ladder_of_cut("pork rib roast, bone-in, roasted");
  const Mass two = pounds(14);
  // A bone each is 20; the hungrier take a bone and a half.
  CHECK(portions_from(rib, two, portion_at_plate(RibPortion{1, 10}, rib, pounds(7))).portions ==
        20);
  const Integer hungry =
      portions_from(rib, two, portion_at_plate(RibPortion{fraction(7, 5), 10}, rib, pounds(7)))
          .portions;
  CHECK(hungry == 14);
}

TEST_CASE("a half breast of a 12 to 14 lb turkey makes one roll, common practice, no source") {
  const Ladder& turkey = ladder_of_cut("turkey, whole, roasted");
  // A breast is about a third of the meat of a bird; a roll for the oven is 1 to 3 lb of meat.
  for (const int bird : {12, 14}) {
    const Mass half_breast = turkey.down(pounds(bird)) / 3 / 2;
    CHECK(half_breast >= ounces(12));
    CHECK(half_breast <= pounds(3));
  }
}

TEST_CASE("three quarters of an inch is a warm slice, common practice, no source") {
  // A slice of that thickness from a rib of 4 by 5 in: 15 cubic inches of meat at about 1.05 g/mL.
  const Volume slice = Volume::of(Rational(15), units::cubic_inch);
  const Mass weight = Mass::of(slice.in(units::millilitre)*fraction(105, 100), units::gram);
  CHECK(weight >= ounces(8));
  CHECK(weight <= ounces(10));
  const SlicePortion thin{2, weight / 3, Length::of(fraction(1, 4), units::inch)};
  CHECK(slice_at(Length::of(fraction(3, 4), units::inch), thin) == weight);
}
