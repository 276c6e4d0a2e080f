// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/quotes.hpp.

#include "platewright/problem/catalogue/quotes.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem pricing_rules_count(int found) {
  return make_problem(
      "pricing-rules", std::to_string(found) + " pricing rules",
      "one of margin, mark-up and food cost",
      "a margin is a share of the price, a mark-up a share of the cost, a food cost "
      "compares the food with the price: keep the one you mean");
}

PLATEWRIGHT_BODY Problem share_or_sum_unclear(std::string_view what, std::string_view found) {
  const std::string number(found);
  return make_problem("share-or-sum-unclear", std::string(what) + " of " + number,
                      "a share with its sign, or a sum with its decimals",
                      "write " + number + " % or " + number + ".00, whichever is meant");
}

PLATEWRIGHT_BODY Problem dates_out_of_order(std::string_view what, std::string_view day,
                                            std::string_view other, std::string_view other_day) {
  return make_problem("dates-out-of-order",
                      std::string(what) + " on " + std::string(day) + ", after " +
                          std::string(other) + " on " + std::string(other_day),
                      std::string(what) + " on that day or before it", "correct one of the dates");
}

PLATEWRIGHT_BODY Problem price_steps_not_rising(std::string_view found) {
  return make_problem("price-steps-not-rising",
                      "a price step from " + std::string(found) +
                          " that repeats another or takes no more off than one for fewer guests",
                      "more off for more guests, each number once",
                      "put the steps in order, or take one out");
}

PLATEWRIGHT_BODY Problem cancellation_malformed(std::string_view found) {
  return make_problem("cancellation-malformed", "a cancellation at " + in_quotes(found),
                      "a whole number of days before the event, at most 1000",
                      "write it as in `cancellation: {30 days before: 25 %, 7 days before: 80 %}`");
}

PLATEWRIGHT_BODY Problem cancellation_not_rising(std::string_view found) {
  return make_problem("cancellation-not-rising",
                      "a cancellation " + std::string(found) +
                          " that repeats another or costs no more than an earlier one",
                      "the earliest first, each later one dearer",
                      "put them in order, or take one out");
}

PLATEWRIGHT_BODY Problem tax_rate_unclear(const std::vector<std::string>& names) {
  std::string all;
  for (const std::string& name : names) all += (all.empty() ? "" : ", ") + name;
  return make_problem("tax-rate-unclear",
                      "rates of tax with names (" + all + ") and none of them said",
                      "the name of a rate, or `no`",
                      "write `price taxed: NAME`, `taxed: NAME` or `18 %, taxed as NAME`");
}

PLATEWRIGHT_BODY Problem taxed_parts_not_whole(std::string_view sum) {
  return make_problem("taxed-parts-not-whole",
                      "parts of the price at several rates of tax that come to " + std::string(sum),
                      "parts that come to 100 %",
                      "correct the shares under `price taxed`, as in `{food: 70 %, drinks: 30 %}`");
}

PLATEWRIGHT_BODY Problem guest_price_twice(std::string_view kind) {
  return make_problem(
      "guest-price-twice",
      std::string(kind) + " with a price of their own and a share of the full price",
      "one of the two", "keep the one that was agreed");
}

PLATEWRIGHT_BODY Problem extra_counted_twice(std::string_view item) {
  return make_problem("extra-counted-twice",
                      "the extra " + std::string(item) + " with both count and per guest",
                      "one of the two", "keep the one that decides how many there are");
}

PLATEWRIGHT_BODY Problem invoice_missing(std::string_view event) {
  return make_problem("invoice-missing", std::string(event) + " has no invoice yet",
                      "an `invoice` with its number, its date and who came",
                      "add `invoice: {invoice number: 2027-118, invoice date: 2027-10-11}` to the "
                      "event's file");
}

PLATEWRIGHT_BODY Problem workers_counted_twice(std::string_view role) {
  return make_problem("workers-counted-twice",
                      "the role " + std::string(role) + " with both workers and guests per worker",
                      "one of the two", "keep the one that decides how many come");
}

PLATEWRIGHT_BODY Problem quote_at_a_loss(std::string_view event, std::string_view paid,
                                         std::string_view cost, std::string_view cause,
                                         std::string_view covering_price) {
  return make_problem("quote-at-a-loss",
                      in_quotes(event) + " costs " + std::string(cost) + ", and by " +
                          std::string(cause) + " its guests pay " + std::string(paid),
                      "a price that covers the cost: " + std::string(covering_price),
                      "ask for more, or take cost out of the event, before the quote is sent");
}

PLATEWRIGHT_BODY Problem paid_too_much(std::string_view event, std::string_view received,
                                       std::string_view total, std::string_view over) {
  return make_problem(
      "paid-too-much",
      "payments of " + std::string(received) + " for " + in_quotes(event) +
          ", whose bill comes to " + std::string(total),
      "payments of the total or less",
      "pay " + std::string(over) + " back, or correct a payment that is written twice or too high");
}

PLATEWRIGHT_BODY Problem margin_below_asked(std::string_view event, std::string_view paid,
                                            std::string_view asked, std::string_view cause,
                                            std::string_view asked_price) {
  return make_problem(
      "margin-below-asked",
      "the pricing rule of " + in_quotes(event) + " asks for " + std::string(asked) + ", and by " +
          std::string(cause) + " its guests pay " + std::string(paid),
      std::string(asked_price), "ask for more, or write the margin that you mean to have");
}

PLATEWRIGHT_BODY Problem quote_terms_missing(std::string_view event) {
  return make_problem("quote-terms-missing", std::string(event) + " has no terms to quote by",
                      "a `quote` with one pricing rule", "add it to the event's file");
}

}  // namespace platewright::problems
