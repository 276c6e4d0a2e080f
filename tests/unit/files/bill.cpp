// SPDX-License-Identifier: MIT
// What an event's file says of its bill and of the invoice afterwards.

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

using Ids = std::vector<std::string>;

namespace {

const char* const plain_bread = "recipe: bread\nmakes: 4 portions\ningredients: [{flour: 1 cup}]\n";

SmallBook party_book(const std::string& lines, const std::string& terms) {
  return SmallBook(Files{{"e.yaml",
                          "event: party\nat: 2027-08-14 13:00\nguests: {adults: 8, band: 2}\n"
                          "menu: [bread]\n" +
                              lines + "quote: {margin: 30 %, " + terms + "}\n"},
                         {"bread.yaml", plain_bread},
                         {"larder.yaml", larder_text()}});
}

Ids ids_of_party(const std::string& lines, const std::string& terms = "tax: 8 %") {
  SmallBook files = party_book(lines, terms);
  files.read({"e.yaml", "bread.yaml", "larder.yaml"});
  return files.ids();
}

Ids ids_of_bill(const std::string& terms) {
  return ids_of_party("", terms);
}

}  // namespace

TEST_CASE("everything that a bill can say") {
  SmallBook files = party_book(
      "guest prices: {band: 12.00}\npaid by: {band: the agency}\n"
      "invoice: {invoice number: 2027-118, invoice date: 2027-08-16, came: {adults: 7}, "
      "extras: [{item: cider, price: 9.50, count: 12, taxed: hire}], due by: 2027-08-28}\n",
      "tax: {food: 7 %, hire: 19 %}, prices include tax: yes, "
      "price taxed: {food: 70 %, hire: 30 %}, service: \"5 %, taxed as hire\", "
      "extras: [{item: tent, price: 90.00, billed: yes, taxed: hire}], minimum per guest: 9.00, "
      "discounts: [{discount: returning, off: 10 %}, {discount: late, off: 5.00, of: tent}], "
      "deposit: 30 %, second deposit: 100.00, second deposit by: 2027-07-15, "
      "payments: [{on: 2027-05-28, amount: 40.00, by: card}]");
  const auto book = files.read({"e.yaml", "bread.yaml", "larder.yaml"});
  REQUIRE(book);
  const Event& event = book->events.front();
  CHECK(event.guests[1].own_price == money("12"));
  CHECK(event.guests[1].payer == "the agency");
  const QuoteTerms& terms = event.terms;
  CHECK(terms.prices_include_tax);
  REQUIRE(terms.tax.size() == 2);
  CHECK(terms.tax[1].name == "hire");
  CHECK(terms.tax[1].share == fraction(19, 100));
  REQUIRE(terms.price_taxed.parts().size() == 2);
  CHECK(terms.price_taxed.parts()[1].share == fraction(3, 10));
  CHECK(terms.service->taxed.parts().front().rate == 1);
  CHECK(terms.extras.front().taxed.parts().front().rate == 1);
  CHECK(terms.minimum_price == money("9"));
  REQUIRE(terms.discounts.size() == 2);
  CHECK(terms.discounts[0].share == fraction(1, 10));
  CHECK(terms.discounts[1].sum == money("5"));
  CHECK(terms.discounts[1].of == "tent");
  CHECK(terms.conditions.second_deposit->sum == money("100"));
  CHECK(terms.conditions.payments.front().by == "card");
  REQUIRE(event.invoice);
  CHECK(event.invoice->number == "2027-118");
  CHECK(event.invoice->came.at("adults") == 7);
  CHECK(event.invoice->extras.front().count == 12);
  CHECK(event.invoice->extras.front().billed);
}

TEST_CASE("rates with names are named wherever something is taxed") {
  const std::string rates = "tax: {food: 7 %, hire: 19 %}, ";
  CHECK(ids_of_bill(rates + "price taxed: food").empty());
  CHECK(ids_of_bill(rates + "price taxed: no").empty());
  CHECK(ids_of_bill("tax: {all: 19 %}").empty());
  CHECK(ids_of_bill("tax: {food: 7 %, hire: 19 %}") == Ids{"tax-rate-unclear"});
  CHECK(ids_of_bill(rates + "price taxed: yes") == Ids{"tax-rate-unclear"});
  CHECK(ids_of_bill(rates + "price taxed: fod") == Ids{"name-unknown"});
  CHECK(ids_of_bill(rates + "price taxed: food, service: \"5 %, taxed\"") ==
        Ids{"tax-rate-unclear"});
  CHECK(ids_of_bill(rates + "price taxed: {food: 70 %, hire: 20 %}") ==
        Ids{"taxed-parts-not-whole"});
  CHECK(ids_of_bill(rates + "price taxed: food, extras: [{item: van, price: 9, billed: yes}]") ==
        Ids{"key-missing"});
  CHECK(ids_of_bill("tax: {food: 700 %}") == Ids{"share-out-of-range"});
  CHECK(ids_of_bill("tax: 8 %, price taxed: perhaps") == Ids{"word-unknown"});
}

TEST_CASE("terms of a bill that contradict each other") {
  CHECK(ids_of_bill("agreed price: 40.00, minimum per guest: 45.00") ==
        Ids{"agreed-below-minimum"});
  CHECK(ids_of_bill("prices include tax: yes, service: \"5 %, after tax\"") ==
        Ids{"charge-after-tax-included"});
  CHECK(ids_of_bill("deposit: 60 %, second deposit: 60 %") == Ids{"share-out-of-range"});
  CHECK(ids_of_bill("second deposit: 60 %") == Ids{"key-missing"});
  CHECK(ids_of_bill("deposit: 30 %, deposit by: 2027-07-16, second deposit: 30 %, "
                    "second deposit by: 2027-07-15") == Ids{"dates-out-of-order"});
  CHECK(ids_of_bill("discounts: [{discount: walls, off: 5.00, of: tent}]") == Ids{"name-unknown"});
  CHECK(ids_of_bill("discounts: [{discount: walls, off: 5}]") == Ids{"share-or-sum-unclear"});
  CHECK(ids_of_bill("extras: [{item: napkins, price: 1, count: 9, per guest: yes}]") ==
        Ids{"extra-counted-twice"});
  CHECK(ids_of_party("price shares: {band: 1/2}\nguest prices: {band: 12.00}\n") ==
        Ids{"guest-price-twice"});
  CHECK(ids_of_party("guest prices: {bnad: 12.00}\n") == Ids{"name-unknown"});
  CHECK(ids_of_party("paid by: {bnad: the agency}\n") == Ids{"name-unknown"});
}

TEST_CASE("an invoice has a number and a date, and those who came are guests of the event") {
  CHECK(ids_of_party("invoice: {invoice number: 7, invoice date: 2027-08-16}\n").empty());
  CHECK(ids_of_party("invoice: {}\n") == Ids{"key-missing", "key-missing"});
  CHECK(ids_of_party("invoice: 7\n") == Ids{"wrong-shape"});
  CHECK(ids_of_party("invoice: {invoice number: 7, invoice date: 2027-08-16, came: {crew: 2}}\n") ==
        Ids{"name-unknown"});
  CHECK(
      ids_of_party("invoice: {invoice number: 7, invoice date: 2027-08-16, came: {band: .5}}\n") ==
      Ids{"number-malformed"});
}
