// SPDX-License-Identifier: MIT
// A file means the same in any company and in any order.

#include <rapidcheck.h>

#include <algorithm>

#include "platewright/costing/current_prices.hpp"
#include "platewright/event/order_of_day.hpp"
#include "platewright/files/read_book.hpp"
#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::string any_number(int most) {
  return std::to_string(*rc::gen::inRange(1, most));
}

/// A larder, a dish, a later price list and an event, in a currency and in measures of their own;
/// salt is of a larder that all of them name.
void add_house(const std::string& number, Files& files) {
  const bool euro = *rc::gen::arbitrary<bool>();
  const std::string currency = euro ? "EUR" : "USD";
  const auto measures = *rc::gen::element<std::string>("", "measures: us\n", "measures: metric\n");
  files.push_back({"larder" + number + ".yaml",
                   "currency: " + currency + "\n" + measures + "larder:\n  goods " + number +
                       ": {buy: [{pack: " + any_number(9) + " lb, price: " + any_number(90) +
                       ".00, from: the mill}], allergens: none}\n"});
  files.push_back({"dish" + number + ".yaml",
                   "recipe: dish " + number + "\nwith: [larder" + number +
                       ".yaml, common.yaml]\nmakes: 10 portions\ningredients:\n  - goods " +
                       number + ": " + any_number(9) + " lb\n  - salt: " + any_number(9) +
                       " cups\n"});
  files.push_back({"list" + number + ".yaml", "prices: list " + number +
                                                  "\ncurrency: USD\non: 2027-10-0" + any_number(9) +
                                                  "\noffers:\n  salt: {pack: " + any_number(9) +
                                                  " kg, price: " + any_number(90) + ".00}\n"});
  const bool listed = *rc::gen::arbitrary<bool>();
  files.push_back(
      {"event" + number + ".yaml",
       "event: event " + number + "\nwith: [" + (listed ? "list" + number + ".yaml, " : "") +
           "dish" + number + ".yaml]\nat: 2027-10-0" + any_number(9) +
           " 12:00\nguests: {adults: " + any_number(200) + "}\nmenu: [dish " + number + "]\n"});
}

/// All that is bought for an event by its own book.
std::vector<std::string> bought(const Book& book) {
  const Event& event = book.events.front();
  const Order order =
      order_of_day({Occasion{event, book.recipes, current_prices(book.prices, day_of(event))}});
  std::vector<std::string> out{event.name, book.prices.currency.code(),
                               as_exact(order.total.in(units::currency_unit))};
  for (const SupplierOrder& supplier : order.suppliers) {
    for (const OrderLine& line : supplier.lines) {
      out.push_back(supplier.supplier + " " + line.ingredient + " " + line.packs.str() + " " +
                    as_exact(line.need.number));
    }
  }
  return out;
}

}  // namespace

TEST_CASE("an event buys the same alone, in company, and in any order of the files") {
  CHECK(rc::check([] {
    Files files{
        {"common.yaml",
         "currency: USD\nexchange rates: {EUR: 1.085}\nlarder:\n  salt: {weighs: {1 L: 1200 "
         "g}, buy: [{pack: 3 lb, price: 2.00, from: the market}], allergens: none}\n"}};
    for (const char* number : {"1", "2"}) add_house(number, files);
    SmallBook book(files);
    std::vector<std::string> names{book.path("event1.yaml"), book.path("event2.yaml")};
    const bool second = *rc::gen::arbitrary<bool>();
    ProblemList problems;
    const auto alone = read_book({names[second ? 1 : 0]}, problems);
    RC_ASSERT(alone.has_value());
    const bool turned = *rc::gen::arbitrary<bool>();
    if (turned) std::swap(names[0], names[1]);
    const auto company = read_events_apart(names, problems);
    RC_ASSERT(company.has_value());
    RC_ASSERT(company->together.prices.currency == Currency("USD"));
    RC_ASSERT(bought(company->apart.at(second == turned ? 0 : 1)) == bought(*alone));
  }));
}
