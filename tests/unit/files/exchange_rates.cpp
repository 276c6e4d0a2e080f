// SPDX-License-Identifier: MIT
// Prices in other currencies than the book's.

#include "platewright/costing/unit_price.hpp"
#include "support/catch.hpp"
#include "support/small_book.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

using Ids = std::vector<std::string>;

const char* const oil =
    "larder:\n"
    "  oil: {buy: [{pack: 2 L, price: 8.00 EUR per L, deposit: 1.00 EUR}], allergens: none}\n";

Purchase oil_of(const Book& book, std::size_t number = 0) {
  return book.prices.find("oil")->purchases.at(number);
}

}  // namespace

TEST_CASE("a price in another currency is worked out at the larder's rate, exactly") {
  SmallBook files(
      Files{{"l.yaml", std::string("currency: USD\nexchange rates: {EUR: 1.085}\n") + oil}});
  const auto book = files.read({"l.yaml"});
  REQUIRE(book);
  CHECK(oil_of(*book).price == money("17.36"));
  CHECK(oil_of(*book).deposit == money("1.085"));
  REQUIRE(oil_of(*book).written_in);
  CHECK(oil_of(*book).written_in->currency.code() == "EUR");
  CHECK(oil_of(*book).written_in->rate == fraction(217, 200));
}

TEST_CASE("a later price list has a currency and a rate of its own") {
  SmallBook files(
      Files{{"l.yaml", std::string("currency: USD\nexchange rates: {EUR: 1.085}\n") + oil},
            {"p.yaml",
             "prices: the importer\ncurrency: EUR\non: 2027-09-06\n"
             "exchange rates: {EUR: {is: 1.1, source: our bank}}\n"
             "offers:\n  oil: [{pack: 2 L, price: 18.00}, {pack: 5 L, price: 40.00 USD}]\n"}});
  const auto book = files.read({"l.yaml", "p.yaml"});
  REQUIRE(book);
  CHECK(oil_of(*book, 1).price == money("19.80"));
  CHECK(oil_of(*book, 1).written_in->source == "our bank");
  CHECK(oil_of(*book, 2).price == money("40.00"));
  CHECK(!oil_of(*book, 2).written_in);
}

TEST_CASE("without a rate two currencies do not mix, and the place is said once") {
  const auto with = [](const std::string& text) { return ids_of(text + oil); };
  CHECK(with("currency: USD\n") == Ids{"exchange-rate-missing"});
  CHECK(with("currency: USD\nexchange rates: {EUR: 0}\n").front() == "number-not-positive");
  CHECK(with("currency: USD\nexchange rates: {EUR: one}\n").front() == "number-missing");
  CHECK(with("currency: USD\nexchange rates: {EURO: 1.085, EUR: 1.1}\n") ==
        Ids{"currency-malformed"});
  CHECK(with("currency: USD\nexchange rates: {EUR: 1.085, USD: 1}\n") ==
        Ids{"exchange-rate-of-itself"});
  SmallBook files(Files{{"a.yaml", larder_text()},
                        {"b.yaml",
                         "currency: EUR\nlarder:\n"
                         "  oil: {buy: [{pack: 2 L, price: 8.00}], allergens: none}\n"
                         "  tea: {buy: [{pack: 2 lb, price: 8.00}], allergens: none}\n"}});
  CHECK_FALSE(files.read({"a.yaml", "b.yaml"}));
  CHECK(files.ids() == Ids{"exchange-rate-missing"});
}

TEST_CASE("what is wrong with an offer stands at its own value") {
  SmallBook files(Files{{"l.yaml",
                         "currency: USD\nlarder:\n"
                         "  oil: {buy: [{pack: 2 L, price: 8.00 per lb}], allergens: none}\n"
                         "  tea: {buy: [{pack: none, price: 8.00}], allergens: none}\n"}});
  CHECK_FALSE(files.read({"l.yaml"}));
  REQUIRE(files.problems.all().size() == 2);
  CHECK(files.problems.all()[0].place.column == 34);
  CHECK(files.problems.all()[1].place.column == 22);
}
