// SPDX-License-Identifier: MIT
// The built-in yields of grains, pulses and pasta against the water of the dry and of the cooked
// food in USDA SR28 (2016), typed in once more from the abbreviated file of the release:
// cooked weight / dry weight = (100 - water dry) / (100 - water cooked), the dry matter being kept.

#include <string>

#include "platewright/book/tables.hpp"
#include "platewright/yield/yield_table.hpp"
#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Per cent of water, each with the NDB number of its food.
struct WaterOf {
  const char* grain;
  const char* dry;
  const char* dry_water;
  const char* cooked;
  const char* cooked_water;
};

constexpr WaterOf waters[] = {
    {"white rice, long-grain, boiled", "20044", "11.62", "20045", "68.44"},
    {"white rice, medium-grain, boiled", "20050", "12.89", "20051", "68.61"},
    {"white rice, short-grain, boiled", "20052", "13.29", "20053", "68.53"},
    {"white rice, parboiled, boiled", "20046", "9.86", "20047", "70.36"},
    {"glutinous rice, cooked", "20054", "10.46", "20055", "76.63"},
    {"brown rice, long-grain, boiled", "20036", "11.80", "20037", "70.27"},
    {"brown rice, medium-grain, boiled", "20040", "12.37", "20041", "72.96"},
    {"wild rice, boiled", "20088", "7.76", "20089", "73.93"},
    {"pearl barley, boiled", "20005", "10.09", "20006", "68.80"},
    {"bulgur, cooked", "20012", "9.00", "20013", "77.76"},
    {"quinoa, boiled", "20035", "13.28", "20137", "71.61"},
    {"couscous, cooked", "20028", "8.56", "20029", "72.57"},
    {"millet, boiled", "20031", "8.67", "20032", "71.41"},
    {"amaranth grain, boiled", "20001", "11.29", "20002", "75.16"},
    {"buckwheat groats, roasted, boiled", "20009", "8.41", "20010", "75.63"},
    {"khorasan wheat berries, boiled", "20138", "11.07", "20139", "65.18"},
    {"farro (spelt), boiled", "20140", "11.02", "20141", "66.56"},
    {"oat bran, cooked", "20033", "6.55", "20034", "84.00"},
    {"rolled oats, boiled to porridge", "08120", "10.84", "08180", "83.61"},
    {"corn grits, yellow, boiled soft", "08159", "11.37", "08164", "84.36"},
    {"pasta, dried, boiled", "20120", "9.90", "20121", "62.13"},
    {"whole-wheat pasta, dried, boiled", "20124", "8.21", "20125", "61.80"},
    {"fresh pasta, boiled", "20093", "31.00", "20094", "68.56"},
    {"egg noodles, dried, boiled", "20109", "9.01", "20110", "67.73"},
    {"rice noodles, dried, boiled", "20133", "11.91", "20134", "73.82"},
    {"soba noodles, dried, boiled", "20114", "6.88", "20115", "73.01"},
    {"lentils, boiled", "16069", "8.26", "16070", "69.64"},
    {"chickpeas, boiled", "16056", "7.68", "16057", "60.21"},
    {"red kidney beans, boiled", "16032", "11.75", "16033", "66.94"},
    {"pinto beans, boiled", "16042", "11.33", "16043", "62.95"},
    {"white beans, boiled", "16049", "11.32", "16050", "63.08"},
    {"navy beans, boiled", "16037", "12.10", "16038", "63.81"},
    {"great northern beans, boiled", "16024", "10.70", "16025", "69.00"},
    {"black-eyed peas, dried, boiled", "16062", "11.95", "16063", "70.04"},
    {"large lima beans, dried, boiled", "16071", "10.17", "16072", "69.79"},
    {"mung beans, boiled", "16080", "9.05", "16081", "72.66"},
    {"split peas, boiled", "16085", "8.62", "16086", "69.49"},
    {"soybeans, boiled", "16108", "8.54", "16109", "62.55"},
};

}  // namespace

TEST_CASE("grains take up the water that USDA SR28 prints for the dry and the cooked food") {
  const YieldTable table(built_in_yields());
  for (const WaterOf& water : waters) {
    INFO(water.grain);
    const Grain& row = table.grain(water.grain);
    const Rational hundred = 100;
    CHECK(row.yield ==
          (hundred - printed(water.dry_water)) / (hundred - printed(water.cooked_water)));
    CHECK(row.source.row.find(std::string("NDB ") + water.dry) != std::string::npos);
    CHECK(row.source.row.find(std::string("NDB ") + water.cooked) != std::string::npos);
  }
}

TEST_CASE("the water table agrees with weighings of the same source within a few points") {
  // USDA SR28 (2016), weights: 86 g of couscous and 69 g of urad from one ounce dry.
  const YieldTable table(built_in_yields());
  const Rational by_water = table.grain("couscous, cooked").yield;
  const Rational weighed = table.grain("couscous, cooked, by weight").yield;
  CHECK(weighed == Rational(86) / printed("28.35"));
  CHECK(by_water > weighed);
  CHECK(by_water < weighed * fraction(11, 10) + fraction(1, 10));
}
