// SPDX-License-Identifier: MIT
// The sheet of one conversion: every exact form, and through whose figure.

#include "platewright/card/measure_sheet.hpp"

#include <variant>

#include "platewright/quantity/read_amount.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

constexpr MeasuringSystem us = MeasuringSystem::us;

MeasureAnswer asked(const char* amount, const char* unit) {
  const Amount from = read_amount(amount, unit_table(), us);
  return {from, in_unit(from, unit_table().find(unit, us)), {}, {}, {}};
}

/// The text behind a key of the sheet; empty where it is not there.
std::string fact(const MeasureAnswer& answer, const std::string& key) {
  const Sheet sheet = measure_sheet(answer, KitchenView(usual_kitchen(us, unit_table())));
  for (const Fact& fact : std::get<Facts>(sheet.blocks.front()).facts) {
    if (fact.key == key) return fact.value.text;
  }
  return {};
}

}  // namespace

TEST_CASE("an exact amount is printed as a decimal that ends and as a fraction") {
  CHECK(fact(asked("1 lb", "g"), "exact") == "453.59237 g");
  CHECK(fact(asked("1 lb", "g"), "fraction") == "45359237/100000 g");
  CHECK(fact(asked("1 lb", "g"), "repeating").empty());
}

TEST_CASE("a decimal that does not end has its repeating part marked") {
  CHECK(fact(asked("1 tsp", "cup"), "exact") == "1/48 cup");
  CHECK(fact(asked("1 tsp", "cup"), "repeating") == "0.0208(3) cup");
  CHECK(fact(asked("1 oz", "lb"), "exact") == "0.0625 lb");
  CHECK(fact(asked("1 g", "lb"), "repeating") == "repeats after more than 60 digits");
}

TEST_CASE("the sheet says whose cups and pints they are") {
  CHECK(fact(asked("1 cup", "pt"), "asked_unit") == "US cup");
  CHECK(fact(asked("1 cup", "pt"), "unit") == "US pint");
  CHECK(fact(asked("1 lb", "g"), "asked_unit").empty());
}

TEST_CASE("a whole number has but one form") {
  CHECK(fact(asked("1 gal", "tsp"), "exact") == "768 tsp");
  CHECK(fact(asked("1 gal", "tsp"), "fraction").empty());
  CHECK(fact(asked("1 gal", "tsp"), "repeating").empty());
}

TEST_CASE("the sheet says which figure it went through and what another would give") {
  MeasureWeight cup{read_amount("1 cup", unit_table(), us),
                    Mass::of(227, units::gram),
                    {},
                    true,
                    "USDA SR28",
                    "NDB 01145 seq 3",
                    false};
  MeasureWeight spoon = cup;
  spoon.measure = read_amount("1 tbsp", unit_table(), us);
  spoon.weighs = Mass::of(fraction(142, 10), units::gram);
  const IngredientWeights butter{"butter", {cup, spoon}};
  MeasureAnswer answer{read_amount("1 cup", unit_table(), us)};
  const Conversion given = convert(answer.asked, unit_table().find("g", us), butter);
  answer.converted = given.amount;
  answer.through = given.through;
  answer.others = other_answers(answer.asked, butter, given);
  CHECK(fact(answer, "source_1") == "1 cup weighs 227 g: USDA SR28, NDB 01145 seq 3");
  CHECK(fact(answer, "other_1") ==
        "1 tbsp weighs 14.2 g: USDA SR28, NDB 01145 seq 3; it would give 227.2 g (+0.1 %)");
  CHECK(fact(answer, "measures") ==
        "US customary cups, spoons and pints; the fewest measures within 2 %");
}
