// SPDX-License-Identifier: MIT
#include "platewright/costing/unit_price.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("a unit price is the pack's price over its content") {
  const UnitPrice price = unit_price(pack("40 lb", "62.00"));
  CHECK(price.price == money("1.55"));
  CHECK(price.unit == amount("1 lb").unit);
}

TEST_CASE("a unit price is of the unit by which the trade compares prices") {
  const auto compared_by = [](const std::string& unit) {
    return trade_unit(amount("1 " + unit).unit).name();
  };
  const UnitPrice olive_oil = unit_price(pack("750 mL", "6.98"));
  CHECK(olive_oil.unit == amount("1 L").unit);
  CHECK(olive_oil.price == money(fraction(698, 75)));
  CHECK(unit_price(pack("8 oz", "2.00")).price == money("4.00"));
  CHECK(compared_by("g") == "kilogram");
  CHECK(compared_by("oz") == "pound");
  CHECK(compared_by("cup") == "US quart");
  CHECK(compared_by("metric cup") == "litre");
  CHECK(compared_by("imperial fl oz") == "imperial pint");
  for (const char* kept : {"tonne", "gal", "imperial gal", "dry pt", "No. 8 scoop", "each", "dozen",
                           "bunch", "#10 can", "wine bottle"}) {
    CHECK(compared_by(kept) == amount("1 " + std::string(kept)).unit.name());
  }
}

TEST_CASE("an edible-portion price is the as-purchased price over the yield") {
  const UnitPrice price = edible_portion_price(unit_price(pack("1 lb", "3.50")), fraction(3, 5));
  CHECK(price.price == money(fraction(35, 6)));
}

TEST_CASE("a pack without content has no unit price") {
  CHECK(problem_of([] { unit_price(pack("0 lb", "62.00")); }).id == "number-not-positive");
  Purchase bunch = pack("1 bunch", "1.80");
  bunch.weighs = amount("0 oz");
  CHECK(problem_of([&] { unit_price(bunch); }).id == "number-not-positive");
}

TEST_CASE("an edible portion is bought through its yield") {
  const Ingredient carrot = ingredient("carrot", fraction(4, 5));
  const Bought bought = bought_for(amount("2 lb"), Stage::trimmed, carrot, pack("10 kg", "12"));
  CHECK(bought.yield == fraction(4, 5));
  CHECK(bought.amount.unit == amount("1 kg").unit);
  CHECK(to_mass(bought.amount) == Mass::of(fraction(5, 2), units::pound));
  const Bought whole = bought_for(amount("2 lb"), Stage::purchased, carrot, pack("10 kg", "12"));
  CHECK(whole.yield == 1);
  CHECK(to_mass(whole.amount) == pounds(2));
}

TEST_CASE("things that are bought by the count are used by the count") {
  const Ingredient lemon = ingredient("lemon", fraction(1, 2));
  const Purchase dozen = pack("1 dozen", "6.00");
  const Bought bought = bought_for(amount("3"), Stage::trimmed, lemon, dozen);
  CHECK(bought.yield == 1);
  CHECK(bought.amount.canonical() == 3);
  CHECK(price_of(bought.amount, dozen) == money("1.50"));
}

TEST_CASE("whole pieces are the supplier's pieces") {
  const Purchase bird = piece("4 lb", "10.00", "the butcher");
  const Bought bought = bought_for(amount("3 each"), Stage::purchased, ingredient("chicken"), bird);
  CHECK(to_mass(bought.amount) == pounds(12));
  CHECK(price_of(bought.amount, bird) == money("30.00"));
}

TEST_CASE("a pack's second measure leads to its content") {
  Purchase bunch = pack("1 bunch", "1.80");
  bunch.weighs = amount("2 oz");
  const Ingredient parsley = ingredient("parsley", fraction(1, 2));
  const Bought leaves = bought_for(amount("1/2 oz"), Stage::trimmed, parsley, bunch);
  CHECK(leaves.amount.number == fraction(1, 2));
  CHECK(leaves.yield == fraction(1, 2));
  CHECK(price_of(leaves.amount, bunch) == money("0.90"));
  const Bought bunches = bought_for(amount("3 bunches"), Stage::trimmed, parsley, bunch);
  CHECK(bunches.amount.number == 3);
  CHECK(bunches.yield == 1);
  Purchase tray = pack("5 lb", "9.00");
  tray.weighs = amount("30 each");
  const Bought counted = bought_for(amount("6"), Stage::trimmed, ingredient("egg"), tray);
  CHECK(counted.amount.number == 1);
}

TEST_CASE("goods bought by the count lose their trim once") {
  Ingredient onion = ingredient("onion", fraction(9, 10));
  onion.weights.rows = {weighing("1 each", grams(110))};
  const Purchase dozen = pack("1 dozen", "6.00");
  const Bought trimmed = bought_for(amount("220 g"), Stage::trimmed, onion, dozen);
  CHECK(trimmed.amount.canonical() == 2);
  CHECK(trimmed.yield == 1);
  // 220 g with their skins are fewer onions.
  const Bought whole = bought_for(amount("220 g"), Stage::purchased, onion, dozen);
  CHECK(whole.amount.canonical() == printed("1.8"));
  // Onions used by the count and bought by weight are bought with their skins.
  const Bought weighed = bought_for(amount("2"), Stage::trimmed, onion, pack("99 g", "1"));
  CHECK(to_mass(weighed.amount) == grams(fraction(2200, 9)));
}

TEST_CASE("measures go through the ingredient's own weights") {
  Ingredient flour = ingredient("flour");
  flour.weights.rows = {weighing("1 cup", grams(125))};
  const Bought bought = bought_for(amount("2 cups"), Stage::trimmed, flour, pack("1 kg", "2.00"));
  CHECK(bought.amount.number == fraction(1, 4));
  CHECK(price_of(bought.amount, pack("1 kg", "2.00")) == money("0.50"));
}

TEST_CASE("without a weight there is no way from a cup to a kilogram") {
  const auto work = [] {
    bought_for(amount("2 cups"), Stage::trimmed, ingredient("flour"), pack("1 kg", "2.00"));
  };
  CHECK(problem_of(work).id == "density-missing");
}
