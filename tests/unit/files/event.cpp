// SPDX-License-Identifier: MIT
// An event's file.

#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

using Ids = std::vector<std::string>;

namespace {

const char* const soup = "recipe: soup\nmakes: 4 portions\ningredients: [{flour: 1 cup}]\n";

/// An event of soup with these lines besides.
std::string event(const std::string& lines) {
  return "event: lunch\nmenu: [soup]\n" + lines;
}

Ids ids_of_event(const std::string& text) {
  SmallBook files(Files{{"e.yaml", text}, {"soup.yaml", soup}, {"larder.yaml", larder_text()}});
  files.read({"e.yaml", "soup.yaml", "larder.yaml"});
  return files.ids();
}

Ids ids_of_guests(const std::string& lines) {
  return ids_of_event(event("guests: {adults: 8}\n" + lines));
}

}  // namespace

TEST_CASE("everything that an event can say") {
  SmallBook files(Files{{"e.yaml",
                         "event: lunch\nat: 2027-10-09 18:30 America/Chicago\n"
                         "guests: {adults: 70, children: 10}\nportion shares: {children: 1/2}\n"
                         "price shares: {children: 0}\nmenu:\n  - soup: 40 %\n  - soup: everyone\n"
                         "over: 5 %\n"},
                        {"soup.yaml", soup},
                        {"larder.yaml", larder_text()}});
  const auto book = files.read({"e.yaml", "soup.yaml", "larder.yaml"});
  REQUIRE(book);
  const Event& lunch = book->events.front();
  CHECK(clock_text(lunch.at->local()) == "18:30");
  CHECK(lunch.at->zone().name() == "America/Chicago");
  CHECK(lunch.guests.at(1).portion_share == fraction(1, 2));
  CHECK(lunch.guests.at(1).price_share == 0);
  CHECK(lunch.menu.at(0).share == fraction(2, 5));
  CHECK(lunch.menu.at(1).share == 1);
  CHECK(lunch.over == fraction(1, 20));
  CHECK_FALSE(lunch.has_terms);
}

TEST_CASE("dates that do not exist") {
  CHECK(ids_of_guests("at: 2027-02-30 18:30\n") == Ids{"date-malformed"});
  CHECK(ids_of_guests("at: 2027-02-28 24:30\n") == Ids{"date-malformed"});
  CHECK(ids_of_guests("at: 9 October 2027\n") == Ids{"date-malformed"});
  CHECK(ids_of_guests("at: 2028-02-29 18:30\n").empty());
}

TEST_CASE("guests come whole and are not fewer than none") {
  CHECK(ids_of_event(event("guests: {adults: -3}\n")) == Ids{"number-signed"});
  CHECK(ids_of_event(event("guests: {adults: 2.5}\n")) == Ids{"number-malformed"});
  CHECK(ids_of_event(event("guests: 84\n")) == Ids{"wrong-shape"});
  CHECK(ids_of_event(event("")) == Ids{"key-missing"});
}

TEST_CASE("shares of guests") {
  CHECK(ids_of_guests("portion shares: {childern: 1/2}\n") == Ids{"name-unknown"});
  CHECK(ids_of_guests("price shares: {adults: 2000 %}\n") == Ids{"share-out-of-range"});
  CHECK(ids_of_guests("over: 150 %\n") == Ids{"share-out-of-range"});
}

TEST_CASE("terms of a quote that contradict themselves") {
  const auto ids = [](const std::string& terms) {
    return ids_of_guests("at: 2027-10-09 18:30\nquote: {margin: 30 %, " + terms + "}\n");
  };
  CHECK(ids("deposit: 40 %, deposit by: 2027-09-01, balance by: 2027-11-01").empty());
  CHECK(ids("deposit: 40") == Ids{"share-or-sum-unclear"});
  CHECK(ids("deposit: 40.00").empty());
  CHECK(ids("deposit: 500").empty());
  CHECK(ids("overhead: 10") == Ids{"share-or-sum-unclear"});
  CHECK(ids("deposit: 40 %, deposit by: 2027-10-10") == Ids{"dates-out-of-order"});
  CHECK(ids("deposit: 40 %, deposit by: 2027-09-02, balance by: 2027-09-01") ==
        Ids{"dates-out-of-order"});
  CHECK(ids("guarantee by: 2028-10-09, valid until: 2028-01-01") ==
        Ids{"dates-out-of-order", "dates-out-of-order"});
  CHECK(ids("guaranteed guests: 120.5") == Ids{"number-malformed"});
  CHECK(ids("price steps: {50 guests: 2 %, 100 guests: 5 %}").empty());
  CHECK(ids("price steps: {100 guests: 5 %, 150 guests: 3 %}") == Ids{"price-steps-not-rising"});
  CHECK(ids("price steps: {100 guests: 5 %, 100: 6 %}") == Ids{"price-steps-not-rising"});
  CHECK(ids("agreed price: 0") == Ids{"number-not-positive"});
  const std::string rate = "time: 4 h, rate: 20.00 per hour}]";
  CHECK(ids("labour: [{role: cook, workers: 0, " + rate) == Ids{"number-not-positive"});
  CHECK(ids("labour: [{role: cook, workers: 2, guests per worker: 20, " + rate) ==
        Ids{"workers-counted-twice"});
}

TEST_CASE("what the paper of a quote says besides sums") {
  SmallBook files(Files{{"e.yaml", event("guests: {adults: 8}\nat: 2027-10-09 18:30\n"
                                         "caterer: [the mill kitchen, 4 Barn Lane]\n"
                                         "client: the growers' club\ncontact: the secretary\n"
                                         "venue: [the barn, Old Mill Road]\n"
                                         "service style: buffet\nquote:\n  margin: 30 %\n"
                                         "  quote number: 2027-031\n  quote date: 2027-06-01\n"
                                         "  includes: [menu and staff, linen]\n"
                                         "  cancellation: {30 days before: 25 %, 1 day before: 1}\n"
                                         "  other terms: [leftovers stay with the caterer]\n")},
                        {"soup.yaml", soup},
                        {"larder.yaml", larder_text()}});
  const auto book = files.read({"e.yaml", "soup.yaml", "larder.yaml"});
  REQUIRE(book);
  const Paper& paper = book->events.front().paper;
  CHECK(paper.number == "2027-031");
  CHECK(paper.written == read_local_day("2027-06-01"));
  CHECK(paper.caterer == std::vector<std::string>{"the mill kitchen", "4 Barn Lane"});
  CHECK(paper.client == std::vector<std::string>{"the growers' club"});
  CHECK(paper.contact == "the secretary");
  CHECK(paper.venue.size() == 2);
  CHECK(paper.service_style == "buffet");
  CHECK(paper.includes == std::vector<std::string>{"menu and staff", "linen"});
  CHECK(paper.other_terms.size() == 1);
  const auto& cancellation = book->events.front().terms.conditions.cancellation;
  REQUIRE(cancellation.size() == 2);
  CHECK(cancellation[0].days_before == 30);
  CHECK(cancellation[0].share == fraction(1, 4));
  CHECK(cancellation[1].share == 1);
}

TEST_CASE("cancellations cost more the nearer the event is") {
  const auto ids = [](const std::string& terms) {
    return ids_of_guests("at: 2027-10-09 18:30\nquote: {margin: 30 %, " + terms + "}\n");
  };
  CHECK(ids("cancellation: {30 days before: 25 %, 7 days before: 80 %}").empty());
  CHECK(ids("cancellation: {one month: 25 %}") == Ids{"cancellation-malformed"});
  CHECK(ids("cancellation: {1.5 days before: 25 %}") == Ids{"cancellation-malformed"});
  CHECK(ids("cancellation: {2000 days before: 25 %}") == Ids{"cancellation-malformed"});
  CHECK(ids("cancellation: {7 days before: 80 %, 30 days before: 25 %}") ==
        Ids{"cancellation-not-rising"});
  CHECK(ids("cancellation: {30 days before: 80 %, 7 days before: 80 %}") ==
        Ids{"cancellation-not-rising"});
  CHECK(ids("cancellation: {30 days before: 120 %}") == Ids{"share-out-of-range"});
  CHECK(ids("quote date: 2027-10-10") == Ids{"dates-out-of-order"});
  CHECK(ids("quote date: 2027-09-02, valid until: 2027-09-01") == Ids{"dates-out-of-order"});
}

TEST_CASE("menus") {
  const auto ids = [](const std::string& menu) {
    return ids_of_event("event: lunch\nguests: {adults: 8}\nmenu: " + menu + "\n");
  };
  CHECK(ids("[soup: 100 %]").empty());
  CHECK(ids("[soup: 0 %]") == Ids{"share-out-of-range"});
  CHECK(ids("[soup: 110 %]") == Ids{"share-out-of-range"});
  CHECK(ids("[[soup]]") == Ids{"wrong-shape"});
  CHECK(ids("[suop]") == Ids{"name-unknown"});
}

TEST_CASE("a dish of the menu says how many it serves") {
  SmallBook files(Files{{"e.yaml", event("guests: {adults: 8}\n")},
                        {"soup.yaml", "recipe: soup\nmakes: 2 qt\ningredients: [{flour: 1 cup}]\n"},
                        {"larder.yaml", larder_text()}});
  files.read({"e.yaml", "soup.yaml", "larder.yaml"});
  CHECK(files.ids() == Ids{"recipe-no-portions"});
}

TEST_CASE("the terms of a quote") {
  const auto ids = [](const std::string& terms) {
    return ids_of_guests("quote: {" + terms + "}\n");
  };
  CHECK(ids("margin: 30 %").empty());
  CHECK(ids("mark-up: 130 %").empty());
  CHECK(ids("margin: 30 %, service: \"18 %, taxed\", tax: 8.25 %, round up to: 0.50").empty());
  CHECK(ids("") == Ids{"pricing-rules"});
  CHECK(ids("margin: 30 %, food cost: 30 %") == Ids{"pricing-rules"});
  CHECK(ids("margin: 100 %") == Ids{"share-out-of-range"});
  CHECK(ids("food cost: 0 %") == Ids{"share-out-of-range"});
  CHECK(ids("margin: 30 %, tax: 800 %") == Ids{"share-out-of-range"});
  CHECK(ids("margin: 30 %, service: 180 %") == Ids{"share-out-of-range"});
  CHECK(ids("margin: 30 %, q factor: 400 %") == Ids{"share-out-of-range"});
  CHECK(ids("margin: 30 %, service: \"18 %, maybe\"") == Ids{"word-unknown"});
  CHECK(ids("margin: 30 %, round up to: 0") == Ids{"number-not-positive"});
  CHECK(ids("margin: 30 %, extras: [{item: van}]") == Ids{"key-missing"});
  CHECK(ids("margin: 30 %, labour: [{role: cook, time: 3 lb, rate: 20}]") ==
        Ids{"wrong-dimension"});
  CHECK(ids("margin: 30 %, labour: [{role: cook, time: 8 h, rate: 20 per lb}]") ==
        Ids{"wrong-dimension"});
}
