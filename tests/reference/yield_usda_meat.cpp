// SPDX-License-Identifier: MIT
// The built-in yields of cuts against figures of the two tables of the US Department of Agriculture
// that they come from, taken from the sources once more and worked out here.

#include <algorithm>
#include <optional>
#include <string>

#include "platewright/book/tables.hpp"
#include "platewright/quantity/units.hpp"
#include "platewright/yield/yield_table.hpp"
#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// The rung of a built-in cut whose source row is that of the food `ndb`.
const Rung* rung_of(const char* cut, const char* ndb) {
  static const YieldTable table(built_in_yields());
  const auto& rungs = table.cut(cut).ladder.rungs();
  const auto found = std::find_if(rungs.begin(), rungs.end(), [&](const Rung& rung) {
    return rung.source.row == std::string("NDB ") + ndb;
  });
  return found == rungs.end() ? nullptr : &*found;
}

/// USDA SR28 (2016), WEIGHT: grams of edible cooked meat from one pound raw as purchased.
struct EdibleCooked {
  const char* cut;
  const char* ndb;
  int grams;
  /// Y = Wc / 453.6 x 100, to one decimal.
  const char* yield;
};

constexpr EdibleCooked edible_cooked[] = {
    {"beef rib, whole (ribs 6-12), bone-in, roasted, whole chain", "13826", 289, "63.7"},
    {"beef rib, large end (ribs 6-9), bone-in, roasted", "13840", 292, "64.4"},
    {"beef rib, small end (ribs 10-12), bone-in, roasted", "13852", 282, "62.2"},
    {"beef tenderloin, boneless, roasted, whole chain", "13919", 330, "72.8"},
    {"beef brisket, whole, boneless, braised", "13804", 329, "72.5"},
    {"beef brisket, point half, boneless, braised", "13808", 332, "73.2"},
    {"beef chuck blade roast, bone-in, braised", "13816", 247, "54.5"},
    {"beef arm pot roast, bone-in, braised, whole chain", "13810", 258, "56.9"},
    {"beef bottom round steak, boneless, braised, whole chain", "13869", 281, "61.9"},
    {"beef top round steak, boneless, broiled, whole chain", "13893", 326, "71.9"},
    {"beef top sirloin steak, boneless, broiled, whole chain", "13930", 306, "67.5"},
    {"beef round, full cut, bone-in, broiled", "13865", 313, "69.0"},
    {"beef sweetbreads (thymus), braised", "13338", 381, "84.0"},
    {"lamb leg, bone-in, closely trimmed, roasted, whole chain", "17231", 260, "57.3"},
    {"lamb leg, shank half, bone-in, closely trimmed, roasted", "17233", 267, "58.9"},
    {"lamb leg, sirloin half, bone-in, closely trimmed, roasted", "17235", 260, "57.3"},
    {"lamb shoulder, bone-in, closely trimmed, roasted, whole chain", "17245", 263, "58.0"},
    {"lamb shoulder chops, bone-in, broiled", "17037", 248, "54.7"},
    {"lamb shoulder, arm roast, bone-in, roasted", "17046", 286, "63.1"},
    {"lamb shoulder, blade roast, bone-in, roasted", "17054", 258, "56.9"},
    {"lamb blade chops, bone-in, braised", "17052", 209, "46.1"},
    {"lamb loin, bone-in, roasted, whole chain", "17025", 269, "59.3"},
    {"lamb rack, bone-in, roasted, whole chain", "17031", 255, "56.2"},
    {"lamb rib chops, bone-in, closely trimmed, broiled", "17240", 222, "48.9"},
    {"lamb stew meat, boneless, braised", "17060", 272, "60.0"},
    {"lamb, ground, broiled", "17225", 313, "69.0"},
    {"New Zealand lamb leg, bone-in, closely trimmed, roasted", "17259", 253, "55.8"},
    {"New Zealand lamb shoulder, bone-in, braised", "17085", 206, "45.4"},
    {"Australian lamb foreshank, bone-in, closely trimmed, braised", "17287", 211, "46.5"},
    {"lamb brains, braised", "17186", 347, "76.5"},
    {"lamb heart, braised", "17192", 191, "42.1"},
    {"lamb liver, braised", "17200", 336, "74.1"},
    {"lamb sweetbreads (pancreas), braised", "17211", 231, "50.9"},
    {"pork shoulder, Boston butt, bone-in, roasted", "10083", 262, "57.8"},
    {"pork tenderloin, boneless, lean only, roasted, whole chain", "10061", 333, "73.4"},
    {"pork shoulder blade roll, cured, boneless, roasted", "10171", 376, "82.9"},
    {"pork tongue, skin off, braised", "10122", 231, "50.9"},
    {"chicken, whole, roasted, whole chain with giblets and neck", "05004", 205, "45.2"},
    {"chicken, whole, roasted, picked meat without skin", "05013", 146, "32.2"},
    {"chicken, whole, stewed, picked meat without skin", "05014", 157, "34.6"},
    {"stewing hen, whole, stewed, whole chain", "05124", 178, "39.2"},
    {"stewing hen, whole, stewed, picked meat without skin", "05126", 137, "30.2"},
    {"capon, whole, roasted, whole chain with giblets and neck", "05134", 218, "48.1"},
    {"duck, whole, roasted, whole chain", "05140", 173, "38.1"},
    {"goose, whole, roasted, whole chain", "05147", 188, "41.4"},
    {"veal leg, top round, boneless, braised", "17095", 272, "60.0"},
    {"veal shoulder, bone-in, roasted", "17118", 258, "56.9"},
    {"veal arm roast, bone-in, roasted", "17124", 283, "62.4"},
    {"veal blade steaks, bone-in, braised", "17129", 186, "41.0"},
    {"veal rib chops, bone-in, braised", "17111", 177, "39.0"},
    {"veal sirloin, bone-in, roasted", "17136", 269, "59.3"},
    {"veal breast, plate half, boneless, braised", "17273", 291, "64.2"},
    {"veal shank, bone-in, braised", "17277", 194, "42.8"},
    {"veal, ground, broiled", "17143", 299, "65.9"},
    {"veal kidneys, braised", "17198", 184, "40.6"},
    {"veal tongue, braised", "17223", 255, "56.2"},
    {"beef brisket, whole, boneless, closely trimmed, braised", "13367", 314, "69.2"},
    {"corned beef brisket, boneless, simmered", "13347", 320, "70.5"},
    {"beef chuck blade roast, bone-in, closely trimmed, braised", "13379", 235, "51.8"},
    {"beef eye of round, boneless, roasted, whole chain", "13878", 333, "73.4"},
    {"beef top round, boneless, braised, whole chain", "13892", 286, "63.1"},
    {"beef top sirloin steak, boneless, pan-fried, whole chain", "13933", 307, "67.7"},
};

/// USDA Table of Cooking Yields for Meat and Poultry, Release 2 (2014): cooked over raw weight in
/// per cent, number of samples, standard deviation, lowest and highest.
struct CookingYield {
  const char* cut;
  const char* ndb;
  const char* yield;
  int samples;
  const char* deviation;
  const char* low;
  const char* high;
};

/// A share that the source prints in per cent; nothing where it prints none.
std::optional<Rational> share_printed(const char* percent) {
  if (*percent == '\0') return std::nullopt;
  return printed(percent) / 100;
}

constexpr CookingYield cooking_yields[] = {
    {"beef rib roast, bone-in, lip-on, roasted", "23191", "76.9", 35, "2.8", "71.8", "83.5"},
    {"beef rib eye steak, boneless, lip-on, grilled", "23197", "83.6", 36, "3.8", "74.6", "91.9"},
    {"beef tenderloin, boneless, roasted", "23345", "82", 1, "", "", ""},
    {"beef top sirloin steak, boneless, broiled or grilled", "13930", "80", 20, "4.87", "69", "87"},
    {"beef inside skirt steak, boneless, grilled", "23214", "72.9", 72, "4.5", "64.3", "84.9"},
    {"beef chuck eye steak, boneless, grilled", "23140", "80.17", 70, "4.94", "61.8", "94.9"},
    {"beef chuck under blade steak, boneless, braised", "23116", "64.96", 34, "4.18", "58.1", "72"},
    {"beef chuck tender (mock tender) steak, boneless, braised", "23119", "71.36", 61, "13.44",
     "56.4", "99.5"},
    {"beef top blade steak, boneless, grilled", "13598", "73", 34, "5.65", "69", "89.9"},
    {"beef bottom round roast, boneless, roasted", "13870", "84", 20, "2.74", "76", "88"},
    {"beef eye of round, boneless, roasted", "13878", "81", 20, "1.99", "75", "83"},
    {"beef, ground, high fat (over 22 %), loaf, baked", "13495", "63", 4, "0.86", "61.94", "63.89"},
    {"beef, ground, medium fat (12 to 22 %), patty, pan-broiled", "23574", "73", 4, "2.77", "70.78",
     "75.97"},
    {"beef heart, simmered", "13322", "57", 1, "", "", ""},
    {"tripe, simmered", "23640", "70", 1, "", "", ""},
    {"pork leg, rump half, bone-in, roasted", "10013", "77", 12, "3.85", "70", "80"},
    {"pork leg cap steak, boneless, broiled or grilled", "10956", "81", 1, "", "", ""},
    {"pork loin blade roast, boneless, roasted", "10990", "75", 12, "5.85", "68", "88"},
    {"pork blade chops, boneless, broiled or grilled", "10988", "85", 12, "3.12", "78", "90"},
    {"pork center loin chops, boneless, pan-broiled", "10189", "80", 1, "", "", ""},
    {"pork sirloin chops, boneless, braised", "10211", "76", 12, "4.93", "61", "87"},
    {"pork tenderloin, boneless, roasted", "10218", "80", 1, "", "", ""},
    {"pork back ribs, bone-in, roasted", "10193", "82", 12, "4.09", "74", "90"},
    {"bacon, baked", "10860", "32", 3, "0.78", "30.53", "32.57"},
    {"ham, shank half, bone-in, lean only, heated", "10933", "92", 3, "1.59", "90.25", "93.35"},
    {"ham, water added, shank half, bone-in, heated", "10867", "86", 6, "6.12", "75.81", "92.68"},
    {"ham and water product, shank half, bone-in, heated", "10881", "82", 6, "6.22", "73.51",
     "91.98"},
    {"ham, natural juices, shank half, bone-in, heated", "10874", "93", 7, "3.23", "88.43",
     "98.26"},
    {"ham, natural juices, whole, boneless, heated", "10883", "94", 9, "1.64", "91.22", "95.54"},
    {"chicken thigh, bone-in, skin on, braised", "05677", "68", 1, "", "", ""},
    {"chicken livers, pan-fried", "05661", "62", 4, "1.25", "61.14", "63.83"},
    {"turkey breast, bone-in, skin on, roasted", "05733", "72", 1, "", "", ""},
    {"turkey dark meat from the whole bird, skin on, roasted", "05184", "69", 1, "", "", ""},
    {"turkey liver, simmered", "05178", "83", 1, "", "", ""},
    {"veal shoulder blade chop, bone-in, grilled", "17438", "77", 1, "", "", ""},
    {"venison (deer), ground, broiled or grilled", "17344", "83", 3, "1.88", "81.22", "84.87"},
};

}  // namespace

TEST_CASE("edible cooked meat of USDA SR28, recomputed from its grams") {
  for (const EdibleCooked& row : edible_cooked) {
    INFO(row.cut);
    const Rational grams = row.grams;
    CHECK(as_decimal(grams / printed("453.6") * 100, 1) == row.yield);
    CHECK(as_decimal(Mass::of(grams, units::gram) / pounds(1) * 100, 1) == row.yield);
    const Rung* rung = rung_of(row.cut, row.ndb);
    REQUIRE(rung != nullptr);
    CHECK(rung->yield == grams / printed("453.59"));
    // The table's pound is written to 1/100 g.
    CHECK(rung->yield * 100 - grams / printed("453.6") * 100 < fraction(1, 400));
    // Where there was a bone it is out already, and the meat is at the plate.
    CHECK(rung->from == Stage::purchased);
    const bool boned = std::count(rung->holds.begin(), rung->holds.end(), Loss::bone) == 1;
    CHECK(rung->to >= (boned ? Stage::served : Stage::cooked));
    CHECK(std::count(rung->holds.begin(), rung->holds.end(), Loss::cooking) == 1);
  }
}

TEST_CASE("cooking yields of USDA Release 2 with their samples and spread") {
  for (const CookingYield& row : cooking_yields) {
    INFO(row.cut);
    const Rung* rung = rung_of(row.cut, row.ndb);
    REQUIRE(rung != nullptr);
    CHECK(rung->yield * 100 == printed(row.yield));
    CHECK(rung->spread.samples == row.samples);
    CHECK(rung->spread.standard_deviation == share_printed(row.deviation));
    CHECK(rung->spread.low == share_printed(row.low));
    CHECK(rung->spread.high == share_printed(row.high));
    CHECK(std::count(rung->holds.begin(), rung->holds.end(), Loss::bone) == 0);
  }
}

TEST_CASE("the tables are as large as a kitchen needs, and every figure has its source") {
  const YieldTable table(built_in_yields());
  CHECK(table.cuts().size() >= 120);
  CHECK(table.produce().size() >= 150);
  for (const Cut& cut : table.cuts()) {
    INFO(cut.name);
    CHECK_FALSE(cut.bought.empty());
    for (const Rung& rung : cut.ladder.rungs()) CHECK_FALSE(rung.source.text.empty());
    // Made once more from its own rungs: no loss is held twice.
    CHECK_NOTHROW(Ladder(cut.ladder.rungs()));
    CHECK_NOTHROW(check_cut(cut));
  }
  for (const Produce& row : table.produce()) {
    INFO(row.name);
    CHECK_FALSE(row.source.text.empty());
    CHECK_FALSE(row.trim.empty());
    CHECK(row.yield <= 1);
  }
  for (const Grain& row : table.grains()) {
    INFO(row.name);
    CHECK_FALSE(row.source.text.empty());
    CHECK(row.yield > 1);
  }
}

TEST_CASE("a row that holds bone and cooking takes no second rung for the same loss") {
  const YieldTable table(built_in_yields());
  const Ladder& chain =
      table.cut("beef rib, whole (ribs 6-12), bone-in, roasted, whole chain").ladder;
  const auto rungs_with = [&](Stage from, Stage to, Loss loss) {
    std::vector<Rung> rungs = chain.rungs();
    rungs.back().to = from;
    rungs.push_back({from, to, fraction(9, 10), {loss}, {}, {}, {"a test", {}}, false});
    return rungs;
  };
  CHECK_THROWS_AS(Ladder(rungs_with(Stage::cooked, Stage::served, Loss::bone)), Failure);
  CHECK_THROWS_AS(Ladder(rungs_with(Stage::trimmed, Stage::cooked, Loss::cooking)), Failure);
  CHECK_NOTHROW(Ladder(rungs_with(Stage::cooked, Stage::served, Loss::carving)));
}
