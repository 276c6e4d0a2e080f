// SPDX-License-Identifier: MIT
// Price history, by-products, and the printed sheets' rounding.

#include "platewright/costing/current_prices.hpp"

#include "platewright/costing/by_products.hpp"
#include "platewright/event/local_time.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Purchase dated(const char* content, const char* price, const char* day,
               const char* supplier = "the market") {
  Purchase out = pack(content, price, supplier);
  out.pack_text = content;
  if (*day != '\0') out.on = read_local_day(day);
  return out;
}

PriceList history() {
  PriceList out;
  out.entries["flour"].purchases = {
      dated("25 lb", "20.00", ""), dated("25 lb", "22.00", "2027-09-01"),
      dated("25 lb", "21.00", "2027-08-01"), dated("50 lb", "35.00", "2027-08-15", "the mill")};
  return out;
}

}  // namespace

TEST_CASE("the newest price on or before the day counts") {
  const auto price_on = [](const char* day) {
    return current_prices(history(), read_local_day(day)).entries.at("flour").purchases[0].price;
  };
  CHECK(price_on("2027-07-31") == money("20.00"));
  CHECK(price_on("2027-08-01") == money("21.00"));
  CHECK(price_on("2027-08-31") == money("21.00"));
  CHECK(price_on("2027-09-01") == money("22.00"));
  const PriceList newest = current_prices(history(), std::nullopt);
  CHECK(newest.entries.at("flour").purchases[0].price == money("22.00"));
  CHECK(newest.entries.at("flour").purchases.size() == 2);
}

TEST_CASE("the newest price stands first and the history stays") {
  const PriceList ordered = with_newest_first(history());
  const auto& flour = ordered.entries.at("flour").purchases;
  REQUIRE(flour.size() == 4);
  CHECK(flour[0].price == money("22.00"));
  CHECK(flour[1].supplier == "the mill");
  CHECK(current_prices(ordered, read_local_day("2027-08-01"))
            .entries.at("flour")
            .purchases[0]
            .price == money("21.00"));
}

TEST_CASE("an offer that is not there yet is none") {
  const PriceList early = current_prices(history(), read_local_day("2027-07-31"));
  CHECK(early.entries.at("flour").purchases.size() == 1);
}

TEST_CASE("a unit price rounded before it is multiplied is another price") {
  PriceList prices;
  prices.entries["stew"].purchases = {pack("3 lb", "10.00")};
  const PriceList rounded = with_unit_prices_rounded(prices);
  CHECK(rounded.entries.at("stew").purchases[0].price == money("9.99"));
  CHECK(prices.entries.at("stew").purchases[0].price == money("10.00"));
}

TEST_CASE("a by-product is credited by its worth, or not at all where it is used") {
  PriceEntry entry;
  entry.by_products = {{"fat", fraction(1, 10), money("0.50"), amount("1 lb").unit, ""},
                       {"bones", fraction(1, 5), Money(), amount("1 lb").unit, "lamb bones"}};
  CHECK(by_product_credit(entry, amount("30 lb")) == money("1.50"));
  CHECK(by_product_credit(entry, amount("16 oz")) == money("0.05"));
  CHECK(problem_of([&] { by_product_credit(entry, amount("1 cup")); }).id == "units-do-not-mix");
}

TEST_CASE("days are read as they are written, and only those that there are") {
  CHECK(date_text(LocalTime(read_local_day("2028-02-29"))) == "2028-02-29");
  CHECK(problem_of([] { read_local_day("2027-02-29"); }).id == "day-malformed");
  CHECK(problem_of([] { read_local_day("9/6/2027"); }).id == "day-malformed");
}
