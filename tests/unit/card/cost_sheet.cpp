// SPDX-License-Identifier: MIT
// A dish's total is one figure on the whole sheet.

#include "platewright/card/cost_sheet.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("the table of dishes prints each dish's total as its own part does") {
  EventCost cost;
  for (const char* total : {"29.6646", "10.004", "5.004"}) {
    PlateCost dish;
    dish.recipe = total;
    dish.total = money(total);
    cost.food += dish.total;
    cost.dishes.push_back(dish);
  }
  const Sheet sheet = event_cost_sheet({}, cost, {});
  const auto& dishes = std::get<Table>(sheet.blocks.front());
  std::vector<std::string> above;
  for (const Row& row : dishes.groups.front().rows) above.push_back(row.back().text);
  std::vector<std::string> below;
  for (std::size_t i = 1; i < sheet.blocks.size(); ++i) {
    const auto* table = std::get_if<Table>(&sheet.blocks[i]);
    if (table != nullptr && table->key == "lines") below.push_back(table->totals.front()[4].text);
  }
  CHECK(above == std::vector<std::string>{"29.66", "10.00", "5.00"});
  CHECK(below == above);
  // 44.6726, and 44.66 as they are printed
  CHECK(dishes.totals.back().back().text == "44.67");
  REQUIRE(dishes.notes.size() == 1);
  CHECK(dishes.notes[0].find("44.66") != std::string::npos);
}

TEST_CASE("the table of dishes says nothing where the printed totals add up") {
  EventCost cost;
  PlateCost dish;
  dish.total = cost.food = money("10.004");
  cost.dishes = {dish, PlateCost{}};
  const Sheet sheet = event_cost_sheet({}, cost, {});
  CHECK(std::get<Table>(sheet.blocks.front()).notes.empty());
}
