// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/orders.hpp.

#include <utility>

#include "platewright/problem/catalogue/orders.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem cut_off_malformed(std::string_view text) {
  return make_problem("cut-off", in_quotes(text),
                      "an hour and the days before the delivery, or one of them: `14:00, 2 days "
                      "before`, `3 days before`, `16:00 the day before`, `07:00 the same day`",
                      "write it in one of these forms");
}

PLATEWRIGHT_BODY Problem closed_days_backwards(std::string_view text) {
  return make_problem("closed-days", in_quotes(text),
                      "a day, or the first and the last day of a time: `2027-12-24 to 2028-01-02`",
                      "write the earlier day first");
}

PLATEWRIGHT_BODY Problem kept_for_malformed(std::string_view text) {
  return make_problem("kept-for", in_quotes(text), "whole days, from 0 to 3650: `3 days`",
                      "write how many days the goods may wait from their delivery to their use");
}

PLATEWRIGHT_BODY Problem supplier_without_offers(std::string_view name,
                                                 const std::vector<std::string>& known) {
  std::string remedy = did_you_mean(name, known);
  if (!remedy.empty()) remedy += " If not, ";
  return make_problem("supplier-without-offers",
                      "the supplier " + in_quotes(name) + ", from whom nothing is bought",
                      "a supplier that an offer names, as in `from: the butcher`",
                      remedy + "write its name as the offers do, or take it out");
}

PLATEWRIGHT_BODY Problem delivery_day_closed(std::string_view supplier, std::string_view day,
                                             std::string_view goods, std::string_view instead,
                                             std::string remedy) {
  return make_problem("delivery-day-closed",
                      in_quotes(supplier) + " is closed on " + std::string(day) +
                          ", its last delivery day before " + std::string(goods) + " is needed; " +
                          std::string(instead),
                      "a delivery on the last delivery day before the first use",
                      std::move(remedy));
}

PLATEWRIGHT_BODY Problem no_delivery_in_time(std::string_view supplier, std::string_view goods,
                                             std::string_view needed, int days,
                                             std::string remedy) {
  return make_problem("no-delivery-in-time",
                      in_quotes(supplier) + " delivers on no day from " + std::to_string(days) +
                          " days before " + std::string(needed) + " on, when " +
                          std::string(goods) + " is needed",
                      "a day on which it delivers before the first use", std::move(remedy));
}

PLATEWRIGHT_BODY Problem delivery_too_early(std::string_view goods, std::string_view supplier,
                                            std::string_view day, int waits, int keeps,
                                            std::string_view needed, std::string remedy) {
  const auto days = [](int count) {
    return std::to_string(count) + (count == 1 ? " day" : " days");
  };
  return make_problem("delivery-too-early",
                      std::string(goods) + " of " + in_quotes(supplier) + ", delivered on " +
                          std::string(day) + ", waits " + days(waits) + " until " +
                          std::string(needed),
                      days(keeps) + " at most, as its `keeps` says", std::move(remedy));
}

PLATEWRIGHT_BODY Problem order_too_late(std::string_view supplier, std::string_view goods,
                                        std::string_view order_by, std::string remedy) {
  return make_problem("order-too-late",
                      "the last hour to order " + std::string(goods) + " of " +
                          in_quotes(supplier) + ", " + std::string(order_by) + ", is over",
                      "an order in time for the first use", std::move(remedy));
}

PLATEWRIGHT_BODY Problem order_below_minimum(const std::string& what, std::string_view supplier,
                                             std::string_view total, std::string_view least,
                                             std::string_view lacks, std::string remedy) {
  return make_problem("order-below-minimum",
                      what + " of " + std::string(total) + " from " + in_quotes(supplier) +
                          ", which lacks " + std::string(lacks),
                      "its minimum of " + std::string(least) + " or more", std::move(remedy));
}

}  // namespace platewright::problems
