// SPDX-License-Identifier: MIT
// Where the spoons and cups of a food disagree.

#include "platewright/quantity/other_answers.hpp"

#include "platewright/number/write.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

Amount amount(const Rational& number, const char* unit) {
  return {number, unit_table().find(unit, MeasuringSystem::us)};
}

MeasureWeight row(const Rational& number, const char* unit, const Rational& grams) {
  return {amount(number, unit), Mass::of(grams, units::gram)};
}

/// USDA SR28, NDB 01145: 227 g a cup, 14.2 g a tablespoon; a pat of 5 g.
const IngredientWeights butter{
    "butter", {row(1, "cup", 227), row(1, "tbsp", fraction(142, 10)), row(1, "pat", 5)}};

Conversion to(const Amount& asked, const char* unit, const IngredientWeights& weights = butter) {
  return convert(asked, unit_table().find(unit, MeasuringSystem::us), weights);
}

}  // namespace

TEST_CASE("a cup goes through the cup, and the spoon would have given more") {
  const Conversion given = to(amount(1, "cup"), "g");
  CHECK(given.amount.number == 227);
  const auto others = other_answers(amount(1, "cup"), butter, given);
  REQUIRE(others.size() == 1);
  CHECK(as_exact(others[0].amount.number) == "227.2");
  CHECK(others[0].row == &butter.rows[1]);
  CHECK(others[0].difference == fraction(2272, 2270) - 1);
}

TEST_CASE("a spoon goes through the spoon, and the cup would have given less") {
  const auto others = other_answers(amount(2, "tbsp"), butter, to(amount(2, "tbsp"), "g"));
  REQUIRE(others.size() == 1);
  CHECK(as_exact(others[0].amount.number) == "28.375");
  CHECK(others[0].difference < 0);
}

TEST_CASE("a weight goes through the measure that is nearest in size, too") {
  CHECK(to(amount(250, "g"), "cup").through == std::vector<const MeasureWeight*>{&butter.rows[0]});
  CHECK(to(amount(15, "g"), "cup").through == std::vector<const MeasureWeight*>{&butter.rows[1]});
}

TEST_CASE("from weight and from pieces to a measure") {
  const Amount weight = amount(227, "g");
  const Conversion given = to(weight, "tbsp");
  for (const OtherAnswer& other : other_answers(weight, butter, given)) {
    const Rational through = weight.number /
                             other.row->weighs.in(units::gram)*other.row->measure.canonical() /
                             other.amount.unit.size();
    CHECK(other.amount.number == through);
  }
  CHECK(other_answers(weight, butter, given).size() == 1);
  CHECK(other_answers(amount(3, "pat"), butter, to(amount(3, "pat"), "cup")).size() == 1);
}

TEST_CASE("nothing is said where all agree or no measure was gone through") {
  const IngredientWeights agreed{"water", {row(1, "cup", 240), row(1, "tbsp", 15)}};
  CHECK(other_answers(amount(1, "cup"), agreed, to(amount(1, "cup"), "g", agreed)).empty());
  CHECK(other_answers(amount(3, "pat"), butter, to(amount(3, "pat"), "g")).empty());
  CHECK(other_answers(amount(1, "lb"), butter, to(amount(1, "lb"), "g")).empty());
}
