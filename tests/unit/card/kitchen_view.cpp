// SPDX-License-Identifier: MIT
// Amounts on a sheet: in whose measures, ranges as ranges, the error where there is one.

#include "platewright/card/kitchen_view.hpp"

#include "platewright/kitchen/read_tools.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

std::string shown(const char* amount, const Rational& factor = 1,
                  MeasuringSystem system = MeasuringSystem::us) {
  const KitchenView view(usual_kitchen(system, unit_table()));
  return view.measure(scaled(read_line_amount(amount, unit_table(), system), factor)).text;
}

std::string described(const char* rounding, const Rational& tolerance = kitchen_tolerance()) {
  Kitchen kitchen = usual_kitchen(MeasuringSystem::us, unit_table());
  kitchen.rounding = read_rounding(rounding, MeasuringSystem::us, unit_table());
  kitchen.tolerance = tolerance;
  return KitchenView(std::move(kitchen)).described();
}

}  // namespace

TEST_CASE("a range is scaled at both ends and stays a range") {
  CHECK(shown("2-3 tbsp") == "2 tbsp to 3 tbsp");
  CHECK(shown("2-3 tbsp", 4) == "1/2 cup to 3/4 cup");
  CHECK(shown("1-2 oz", 8) == "8 oz to 1 lb");
  CHECK(shown("to taste", 4) == "to taste");
}

TEST_CASE("the error is shown where it is not zero") {
  CHECK(shown("1/2 cup") == "1/2 cup");
  CHECK(shown("1/3 cup", fraction(101, 100)) == "1/3 cup (-1 %)");
  CHECK(shown("100 mL", 1, MeasuringSystem::metric) == "100 mL");
  CHECK(shown("101 mL", 1, MeasuringSystem::metric) == "100 mL (-1 %)");
}

TEST_CASE("an error too small for a tenth of a per cent is none") {
  CHECK(shown("1 cup", fraction(100001, 100000)) == "1 cup");
}

TEST_CASE("a weight is what the scale shows, pieces are whole from three on") {
  CHECK(shown("2 lb 3 oz") == "2 lb 3 oz");
  CHECK(shown("11 each") == "11");
  CHECK(shown("8 cloves", fraction(1, 3)) == "2 1/2 cloves (-6.2 %)");
}

TEST_CASE("a sheet says whose cups they are and how they were rounded") {
  CHECK(described("fewest measures") ==
        "US customary cups, spoons and pints; the fewest measures within 2 %");
  CHECK(described("exact") == "US customary cups, spoons and pints; not rounded");
  CHECK(described("army card") ==
        "US customary cups, spoons and pints; rounded by card A-1 of the Armed Forces Recipe "
        "Service (TM 10-412, 2003)");
  CHECK(described("usda schools") ==
        "US customary cups, spoons and pints; rounded by the guide for school kitchens (USDA)");
  CHECK(described("nearest 5 g", fraction(1, 20)) ==
        "US customary cups, spoons and pints; rounded to the nearest 5 g, capacities in the fewest "
        "measures within 5 %");
  const auto of = [](MeasuringSystem system) {
    const std::string text = KitchenView(usual_kitchen(system, unit_table())).described();
    return text.substr(0, text.find(" cups"));
  };
  CHECK(of(MeasuringSystem::imperial) == "imperial");
  CHECK(of(MeasuringSystem::metric) == "metric");
  CHECK(of(MeasuringSystem::australian) == "Australian metric");
  CHECK(of(MeasuringSystem::japanese) == "Japanese metric");
}

TEST_CASE("a length is cut in the kitchen's own measures, exact where nothing is rounded") {
  CHECK(shown("6 ft", fraction(31, 8)) == "24 ft");
  CHECK(shown("1 in", 1, MeasuringSystem::metric) == "3 cm");
  Kitchen exact = usual_kitchen(MeasuringSystem::metric, unit_table());
  exact.rounding = rounding_by(KitchenPolicy::exact, MeasuringSystem::metric, unit_table());
  CHECK(KitchenView(exact).measure(read_amount("6 ft", unit_table(), MeasuringSystem::us)).text ==
        "1.8288 m");
}

TEST_CASE("a range whose ends a kitchen measures alike is one measure") {
  CHECK(shown("2 tbsp to 3 tbsp") == "2 tbsp to 3 tbsp");
  CHECK(shown("1/8 oz to 9/64 oz") == shown("1/8 oz"));
}
