// SPDX-License-Identifier: MIT
// Sizes of units against the figures that their authorities print.

#include "platewright/number/write.hpp"
#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/unit_table.hpp"
#include "platewright/quantity/units.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

Unit unit(const char* name) {
  return unit_table().find(name, MeasuringSystem::us);
}

/// The exact size in grams, millilitres or centimetres.
std::string size_of(const char* name) {
  return as_exact(unit(name).size());
}

std::string count_of(const char* large, const char* small) {
  return as_exact(in_unit(Amount{1, unit(large)}, unit(small)).number);
}

}  // namespace

// NIST SP 811, appendix B.8: figures in bold type are exact.
TEST_CASE("exact factors of NIST SP 811") {
  CHECK(size_of("inch") == "2.54");
  CHECK(size_of("foot") == "30.48");
  CHECK(size_of("yard") == "91.44");
  CHECK(size_of("grain") == "0.06479891");
  CHECK(size_of("ounce") == "28.349523125");
  CHECK(size_of("pound") == "453.59237");
  CHECK(size_of("short ton") == "907184.74");
  CHECK(size_of("long ton") == "1016046.9088");
  CHECK(size_of("cubic inch") == "16.387064");
  CHECK(size_of("imperial gallon") == "4546.09");
  CHECK(size_of("litre") == "1000");
}

// NIST SP 811, appendix B.8: printed with seven digits.
TEST_CASE("rounded factors of NIST SP 811") {
  const auto printed = [](const char* name, unsigned places) {
    return as_decimal(unit(name).size(), places);
  };
  CHECK(printed("US cup", 4) == "236.5882");
  CHECK(printed("US fluid ounce", 5) == "29.57353");
  CHECK(printed("US gallon", 3) == "3785.412");
  CHECK(printed("imperial fluid ounce", 5) == "28.41306");
  CHECK(printed("US gill", 4) == "118.2941");
  CHECK(printed("US pint", 4) == "473.1765");
  CHECK(printed("US quart", 4) == "946.3529");
  CHECK(printed("US tablespoon", 5) == "14.78676");
  CHECK(printed("US teaspoon", 6) == "4.928922");
  CHECK(printed("dram", 6) == "1.771845");
  CHECK(printed("US fluid dram", 6) == "3.696691");
  CHECK(printed("US minim", 8) == "0.06161152");
  CHECK(printed("US peck", 3) == "8809.768");
  CHECK(printed("US dry pint", 4) == "550.6105");
  CHECK(printed("US dry quart", 3) == "1101.221");
}

// NIST Handbook 44, appendix C, tables of units of measurement.
TEST_CASE("tables of NIST Handbook 44") {
  CHECK(count_of("US gallon", "cubic inch") == "231");
  CHECK(count_of("US quart", "cubic inch") == "57.75");
  CHECK(count_of("US pint", "cubic inch") == "28.875");
  CHECK(count_of("US fluid ounce", "US fluid dram") == "8");
  CHECK(count_of("US fluid dram", "US minim") == "60");
  CHECK(count_of("US cup", "US fluid ounce") == "8");
  CHECK(count_of("US tablespoon", "US teaspoon") == "3");
  CHECK(count_of("US cup", "US tablespoon") == "16");
  CHECK(count_of("US gallon", "US quart") == "4");
  CHECK(count_of("US bushel", "cubic inch") == "2150.42");
  CHECK(count_of("US bushel", "US peck") == "4");
  CHECK(count_of("US dry barrel", "cubic inch") == "7056");
  CHECK(count_of("cranberry barrel", "cubic inch") == "5826");
  CHECK(count_of("pound", "ounce") == "16");
  CHECK(count_of("pound", "grain") == "7000");
  CHECK(count_of("ounce", "dram") == "16");
}

// 21 CFR 101.9(b)(5)(viii): for nutrition labelling, and for nothing else.
TEST_CASE("measures for labelling are round and their own") {
  CHECK(size_of("labelling teaspoon") == "5");
  CHECK(size_of("labelling tablespoon") == "15");
  CHECK(size_of("labelling cup") == "240");
  CHECK(size_of("labelling fluid ounce") == "30");
  CHECK(size_of("labelling ounce") == "28");
  CHECK_FALSE(unit("labelling cup") == unit("cup"));
  CHECK_FALSE(unit("labelling ounce") == unit("oz"));
}

// Institute of Child Nutrition, Basics at a Glance: scoops (dishers) by number, level measure. The
// rule "a quart over the number" gives other figures for some.
TEST_CASE("scoops hold what the chart prints") {
  CHECK(count_of("No. 6 scoop", "US cup") == "2/3");
  CHECK(count_of("No. 8 scoop", "US cup") == "0.5");
  CHECK(count_of("No. 12 scoop", "US cup") == "1/3");
  CHECK(count_of("No. 16 scoop", "US cup") == "0.25");
  CHECK(count_of("No. 20 scoop", "US tablespoon") == "10/3");
  CHECK(count_of("No. 40 scoop", "US tablespoon") == "5/3");
  CHECK(count_of("No. 50 scoop", "US teaspoon") == "3.75");
  CHECK(count_of("No. 100 scoop", "US teaspoon") == "2");
}

// The Weights and Measures Act 1985 (UK), schedule 1: the gallon, and its parts.
TEST_CASE("imperial measures are parts of the imperial gallon") {
  CHECK(count_of("imperial gallon", "imperial pint") == "8");
  CHECK(count_of("imperial pint", "imperial fluid ounce") == "20");
  CHECK(count_of("imperial quart", "imperial pint") == "2");
  CHECK(count_of("imperial pint", "imperial gill") == "4");
}

TEST_CASE("both doors give the same size") {
  CHECK(Mass::of(1, units::pound).in(units::gram) == unit("pound").size());
  CHECK(Volume::of(1, units::us_gallon).in(units::millilitre) == unit("US gallon").size());
  CHECK(Volume::of(1, units::imperial_pint).in(units::millilitre) == unit("imperial pint").size());
  CHECK(Length::of(1, units::inch).in(units::centimetre) == unit("inch").size());
  CHECK(Duration::of(1, units::week).in(units::second) == unit("week").size());
}
