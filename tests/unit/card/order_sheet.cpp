// SPDX-License-Identifier: MIT
// What an order's sheet says beside the order itself.

#include "platewright/card/order_sheet.hpp"

#include "card/sheets/order_amounts.hpp"
#include "platewright/card/writers.hpp"
#include "platewright/event/order_of_day.hpp"
#include "support/catch.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

OrderLine line_of(const char* needed, const char* packed) {
  Need need;
  need.ingredient = "goods";
  return order_line(need, amount(needed), pack(packed, "1.00"));
}

std::string texts(const OrderLine& line) {
  const auto [need, left] = card::needed_and_left(line);
  return need.text + ", " + left.text;
}

Sheet sheet_of(const TestKitchen& kitchen) {
  return order_sheet(supper(), order_of_day({supper()}, kitchen.book, kitchen.prices),
                     kitchen.prices);
}

}  // namespace

TEST_CASE("whole things are needed and left over in whole numbers, and stay exact") {
  const OrderLine eggs = line_of("32.55 each", "30 each");
  CHECK(texts(eggs) == "33 each, 27 each");
  CHECK(card::needed_and_left(eggs).first.exact == printed("32.55"));
  CHECK(card::needed_and_left(eggs).second.exact == printed("27.45"));
  CHECK(texts(line_of("3.9 bunches", "1 bunch")) == "4 bunches, 0 bunches");
}

TEST_CASE("a large delivery is spoken of in the larger unit") {
  CHECK(texts(line_of("166 oz", "612 oz")) == "10.38 lb, 27.87 lb");
  CHECK(texts(line_of("1.22 oz", "4 oz")) == "1.22 oz, 2.78 oz");
  CHECK(texts(line_of("400 g", "1000 g")) == "0.4 kg, 0.6 kg");
  CHECK(texts(line_of("100 fl oz", "128 fl oz")) == "3.13 qt, 0.87 qt");
  CHECK(card::needed_and_left(line_of("166 oz", "612 oz")).first.exact == printed("10.375"));
}

TEST_CASE("every line of an order's data has its supplier, its days, its pack and its price") {
  TestKitchen kitchen = supper_kitchen();
  const std::string csv = write_csv(sheet_of(kitchen));
  CHECK(csv.find("the butcher,2027-10-04,2027-10-07,a piece,7.5,7.5,pound,67.50,67.5,USD") !=
        std::string::npos);
  CHECK(csv.find("the market,,2027-10-08,") != std::string::npos);
  const std::string page = write_text(sheet_of(kitchen));
  CHECK(page.find("the butcher - order by Mon 2027-10-04, there by Thu 2027-10-07\n") !=
        std::string::npos);
  CHECK(page.find("\nthere by Fri 2027-10-08\n") != std::string::npos);
  CHECK(page.find("a piece") == std::string::npos);
}

TEST_CASE("what is paid now is the goods with the deposits") {
  TestKitchen kitchen = supper_kitchen();
  const Sheet plain = sheet_of(kitchen);
  CHECK(write_json(plain).find("\"to_pay\"") == std::string::npos);
  kitchen.prices.entries["flour"].purchases[0].deposit = money("2.50");
  const Sheet sheet = sheet_of(kitchen);
  const auto& sums = std::get<Facts>(
      *std::find_if(sheet.blocks.begin(), sheet.blocks.end(),
                    [](const Block& block) { return std::holds_alternative<Facts>(block); }));
  REQUIRE(sums.facts.size() == 5);
  CHECK(sums.facts[0].label == "Goods");
  CHECK(sums.facts[4].label == "To pay");
  CHECK(*sums.facts[4].value.exact == *sums.facts[0].value.exact + printed("2.5"));
}
