// SPDX-License-Identifier: MIT
// A book's own rows win over those that are built in.

#include "platewright/quantity/read_amount.hpp"
#include "support/catch.hpp"
#include "support/small_book.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

using Ids = std::vector<std::string>;

namespace {

Rational grams_of(const Book& book, const char* text, const std::string& food) {
  const IngredientWeights* weights = book.tables.weights.find(food);
  REQUIRE(weights != nullptr);
  return weight_of(read_amount(text, book.tables.units, book.measures), *weights).in(units::gram);
}

Ids ids_of_tables(const std::string& rows) {
  return ids_of("tables: ours\n" + rows);
}

}  // namespace

TEST_CASE("a unit of one's own") {
  SmallBook files(
      Files{{"t.yaml",
             "tables: ours\nunits:\n"
             "  - {unit: mug, names: [mugs], is: 350 mL, source: our own measuring}\n"
             "  - {unit: our cup, names: [cup], is: 2 mugs, source: our own measuring}\n"}});
  const auto book = files.read({"t.yaml"});
  REQUIRE(book);
  CHECK(book->tables.units.find("mugs", MeasuringSystem::us).size() == 350);
  CHECK(book->tables.units.find("cup", MeasuringSystem::us).size() == 700);
}

TEST_CASE("a cut of one's own is of a kind that has a minimum temperature") {
  const auto ids = [](const std::string& kind) {
    return ids_of_tables("cuts:\n  - cut: goat leg\n    safety: " + kind +
                         "\n    rungs: [{from: purchased, to: served, yield: 0.45, source: our "
                         "test}]\n");
  };
  CHECK(ids("ground").empty());
  CHECK(ids("grounded") == Ids{"word-unknown"});
}

TEST_CASE("no minimum is taken for granted for a cut of one's own that does not say its kind") {
  const auto kind_of = [](const std::string& said) {
    SmallBook files(
        Files{{"t.yaml", "tables: ours\ncuts:\n  - cut: goose, whole\n" + said +
                             "    rungs: [{from: purchased, to: served, yield: 0.45, source: our "
                             "test}]\n"}});
    const auto book = files.read({"t.yaml"});
    REQUIRE(book);
    return book->tables.yields.cut("goose, whole").safety;
  };
  CHECK_FALSE(kind_of("").has_value());
  CHECK(kind_of("    safety: Poultry\n") == FoodKind("poultry"));
  CHECK(kind_of("    safety: none\n") == FoodKind::without_minimum());
}

TEST_CASE("a cut of one's own is bought in a way that says whether a bone is in it") {
  const auto ids = [](const std::string& bought) {
    return ids_of_tables(
        "cuts:\n  - cut: goat leg\n    bought: " + bought +
        "\n    rungs: [{from: purchased, to: cooked, yield: 0.7, holds: [cooking], "
        "source: our test}]\n");
  };
  CHECK(ids("bone-in").empty());
  CHECK(ids("bone in") == Ids{"word-unknown"});
}

TEST_CASE("weights of one's own come before the built-in ones") {
  SmallBook files(Files{{"t.yaml",
                         "tables: ours\ndensities:\n"
                         "  - of: all-purpose flour\n    source: our scale\n"
                         "    measures: [{measure: 1 cup, weighs: 140 g}]\n"
                         "pieces:\n"
                         "  - {of: garlic, piece: clove, weighs: 6 g, source: our scale}\n"}});
  const auto book = files.read({"t.yaml"});
  REQUIRE(book);
  CHECK(grams_of(*book, "2 cups", "all-purpose flour") == 280);
  CHECK(grams_of(*book, "1 tbsp", "all-purpose flour") == fraction(35, 4));
  CHECK(grams_of(*book, "10 cloves", "garlic") == 60);
}

TEST_CASE("yields of one's own come before the built-in ones") {
  SmallBook files(
      Files{{"t.yaml",
             "tables: ours\n"
             "produce:\n  - {produce: \"carrot, peeled\", yield: 90 %, source: our test}\n"
             "grains:\n  - {grain: red rice, factor: 0.4, source: our test}\n"
             "cuts:\n  - cut: goat leg\n    rungs:\n"
             "      - {from: purchased, to: served, yield: 0.45, source: our test}\n"}});
  const auto book = files.read({"t.yaml"});
  REQUIRE(book);
  CHECK(book->tables.yields.produce("carrot, peeled").yield == fraction(9, 10));
  CHECK(book->tables.yields.grain("red rice").yield == fraction(5, 2));
  CHECK(book->tables.yields.cut("goat leg").ladder.rungs().front().yield == fraction(9, 20));
}

TEST_CASE("a larder is read with the book's own rows, in whatever order the files are named") {
  SmallBook files(
      Files{{"t.yaml",
             "tables: ours\nproduce:\n  - {produce: samphire, yield: 80 %, source: our test}\n"},
            {"l.yaml",
             "currency: USD\nwith: t.yaml\nlarder:\n  samphire: {produce: samphire, "
             "free: yes, allergens: none}\n"}});
  const auto book = files.read({"l.yaml"});
  REQUIRE(book);
  CHECK(yield_to(book->recipes.ingredient("samphire"), Stage::trimmed) == fraction(4, 5));
}

TEST_CASE("a row says whose figure it is") {
  CHECK(ids_of_tables("units: [{unit: mug, is: 350 mL}]\n") == Ids{"row-without-source"});
  CHECK(ids_of_tables("pieces: [{of: garlic, piece: clove, weighs: 6 g}]\n") ==
        Ids{"row-without-source"});
}

TEST_CASE("rows that can't be") {
  const std::string source = ", source: ours}]\n";
  CHECK(ids_of_tables("units: [{unit: mug, is: 0 mL" + source) == Ids{"number-not-positive"});
  CHECK(ids_of_tables("units: [{unit: mug, is: 1 mug" + source) == Ids{"unit-unknown"});
  CHECK(ids_of_tables("pieces: [{of: garlic, piece: clove, weighs: 0 g" + source) ==
        Ids{"number-not-positive"});
  CHECK(ids_of_tables("pieces: [{of: garlic, piece: clove, weighs: 1 cup" + source) ==
        Ids{"wrong-dimension"});
  CHECK(ids_of_tables("produce: [{produce: samphire, yield: 0" + source) ==
        Ids{"number-not-positive"});
  CHECK(ids_of_tables("cuts: [{cut: goat leg, rungs: [{to: cooked, yield: 0, source: a}]}]\n")
            .front() == "yield-not-positive");
  CHECK(ids_of_tables("units: [{unit: mug, is: 350 mL, colour: red" + source) ==
        Ids{"key-unknown"});
}
