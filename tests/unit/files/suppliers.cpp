// SPDX-License-Identifier: MIT
// What a larder says of its suppliers, and of how its goods are kept.

#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

using Ids = std::vector<std::string>;

namespace {

std::string larder(const std::string& suppliers, const std::string& goods = "") {
  return "currency: USD\nsuppliers:\n" + suppliers + "larder:\n  beans:\n" + goods +
         "    allergens: none\n    buy: [{pack: 10 lb, price: 12.00, from: the butcher}]\n";
}

Ids ids_of_larder(const std::string& suppliers, const std::string& goods = "") {
  SmallBook files(Files{{"larder.yaml", larder(suppliers, goods)}});
  files.read({"larder.yaml"});
  return files.ids();
}

}  // namespace

TEST_CASE("everything that a larder can say of a supplier") {
  SmallBook files(Files{
      {"larder.yaml",
       larder("  the butcher:\n    delivers: [Tue, Friday]\n    order by: 14:00, 2 days before\n"
              "    closed: [2027-10-08, 2027-12-24 to 2028-01-02]\n    minimum: 150.00\n"
              "    delivery charge: 12.50\n    one delivery: yes\n    telephone: 555-0142\n"
              "    address: 4 Weir Lane\n",
              "    kept: chilled\n    keeps: 4 days\n")}});
  const auto book = files.read({"larder.yaml"});
  REQUIRE(book);
  const Supplier& butcher = book->prices.suppliers.at("the butcher");
  CHECK(butcher.comes_on(read_local_day("2027-10-05")));
  CHECK(!butcher.comes_on(read_local_day("2027-10-06")));
  CHECK(butcher.closed_on(read_local_day("2028-01-01")));
  REQUIRE(butcher.cut_off);
  CHECK(butcher.cut_off->days == 2);
  CHECK(butcher.cut_off->hour == std::chrono::hours(14));
  CHECK(butcher.minimum == Money::of(150, units::currency_unit));
  CHECK(butcher.one_delivery);
  CHECK(butcher.telephone == "555-0142");
  const PriceEntry& beans = book->prices.entries.at("beans");
  CHECK(beans.keeping.at == Storage::chilled);
  CHECK(beans.keeping.days == 4);
}

TEST_CASE("what can't be read of a supplier is named") {
  CHECK(ids_of_larder("  the butcher: {order by: two days before}\n") == Ids{"cut-off"});
  CHECK(ids_of_larder("  the butcher: {closed: 2028-01-02 to 2027-12-24}\n") == Ids{"closed-days"});
  CHECK(ids_of_larder("  the butcher: {delivers: Wensday}\n") == Ids{"word-unknown"});
  CHECK(ids_of_larder("  the bucher: {minimum: 20}\n") == Ids{"supplier-without-offers"});
  CHECK(ids_of_larder("  the butcher: {minimum: 20}\n", "    keeps: a while\n") == Ids{"kept-for"});
}
