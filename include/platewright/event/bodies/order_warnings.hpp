// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/order_warnings.hpp.

#include "platewright/event/order_warnings.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY std::string AlikeLines::names() const {
  std::vector<std::string> out;
  for (const OrderLine* line : lines) out.push_back(line->ingredient);
  return names_of(out);
}

PLATEWRIGHT_BODY OrderCheck::OrderCheck(const Order& order, const PriceList& prices,
                                        std::optional<LocalTime> ordered, Place place)
    : order_(order), prices_(prices), ordered_(ordered), place_(std::move(place)) {}

PLATEWRIGHT_BODY ProblemList OrderCheck::run() {
  for (const SupplierOrder& order : order_.suppliers) {
    check_days(order);
    check_hour(order);
    check_minimum(order);
  }
  return std::move(problems_);
}

PLATEWRIGHT_BODY OrderCheck::ByDays OrderCheck::alike(
    const SupplierOrder& order, const std::function<bool(const OrderLine&)>& in_case) {
  ByDays out;
  for (const OrderLine& line : order.lines) {
    if (line.deliver_by && in_case(line)) {
      out[{line.deliver_by, line.deliver_on}].lines.push_back(&line);
    }
  }
  return out;
}

PLATEWRIGHT_BODY std::string OrderCheck::remedy(const AlikeLines& lines,
                                                const std::string& otherwise) const {
  std::string out;
  for (const OrderLine* line : lines.lines) {
    const auto others = suppliers_in_time(*line, prices_, ordered_);
    if (others.empty()) continue;
    out += "order " + in_quotes(line->ingredient) + " from " + names_of(others) + "; or ";
  }
  return out + otherwise;
}

PLATEWRIGHT_BODY std::string OrderCheck::instead(const OrderLine& line) {
  const int days = line.days_early();
  return "delivered on " + weekday_and_date(*line.deliver_on) + " it waits " +
         std::to_string(days) + (days == 1 ? " day" : " days");
}

PLATEWRIGHT_BODY void OrderCheck::check_days(const SupplierOrder& order) {
  for (const auto& [days, lines] :
       alike(order, [](const OrderLine& line) { return !line.deliver_on; })) {
    add(problems::no_delivery_in_time(
        order.supplier, lines.names(), weekday_and_date(*days.first), most_days_before_use,
        remedy(lines, "ask for a day, or correct its `delivers` and `closed`")));
  }
  const auto closed = [&](const OrderLine& line) {
    const auto open = last_delivery(order.terms, *line.deliver_by, true);
    return line.deliver_on && open && *line.deliver_on < *open &&
           order.terms.closed_on(day_part(*open));
  };
  for (const auto& [days, lines] : alike(order, closed)) {
    const LocalTime open = *last_delivery(order.terms, *days.first, true);
    add(problems::delivery_day_closed(order.supplier, weekday_and_date(open), lines.names(),
                                      instead(*lines.lines.front()),
                                      remedy(lines, "ask for another day")));
  }
  const auto too_early = [](const OrderLine& line) {
    return line.keeping.days && line.days_early() > *line.keeping.days;
  };
  for (const OrderLine& line : order.lines) {
    if (!too_early(line)) continue;
    const LocalTime first = *line.deliver_by - std::chrono::days(*line.keeping.days);
    add(problems::delivery_too_early(
        in_quotes(line.ingredient), order.supplier, weekday_and_date(*line.deliver_on),
        line.days_early(), *line.keeping.days, weekday_and_date(*line.deliver_by),
        remedy({{&line}}, "ask for a delivery on " + weekday_and_date(first) + " or later")));
  }
}

PLATEWRIGHT_BODY void OrderCheck::check_hour(const SupplierOrder& order) {
  if (!ordered_) return;
  const auto over = [&](const OrderLine& line) {
    return line.order_by && !is_in_time(*line.order_by, order.terms, *ordered_);
  };
  for (const auto& [days, lines] : alike(order, over)) {
    const OrderLine& line = *lines.lines.front();
    std::string text = weekday_and_date(*line.order_by);
    const auto& cut_off = order.terms.cut_off;
    if (cut_off && cut_off->hour) text += " " + clock_text(*line.order_by + *cut_off->hour);
    const auto next = first_delivery(order.terms, line.purchase, *ordered_);
    add(problems::order_too_late(
        order.supplier, lines.names(), text,
        remedy(lines, next ? "its next delivery that can be ordered is " + weekday_and_date(*next) +
                                 ": ask whether it comes sooner"
                           : std::string("ask whether it still comes"))));
  }
}

PLATEWRIGHT_BODY void OrderCheck::check_minimum(const SupplierOrder& order) {
  for (const Delivery& delivery : order.deliveries) {
    if (delivery.below_minimum > Money()) check_delivery(order, delivery);
  }
}

PLATEWRIGHT_BODY void OrderCheck::check_delivery(const SupplierOrder& order,
                                                 const Delivery& delivery) {
  const bool several = order.deliveries.size() > 1;
  std::string remedy;
  if (several && order.total >= order.terms.minimum) {
    remedy =
        "have all of it on one day (`one delivery: yes`), which is " + sum(order.total) + "; or ";
  }
  if (const auto more = packs_to_minimum(order, delivery)) {
    remedy += "order " + sum(delivery.below_minimum) + " more of what keeps, " + more->packs.str() +
              " more of " + in_quotes(more->line->ingredient) + " (" + sum(more->cost) +
              ") being the least; or ";
  }
  if (const auto goods = goods_to_move(order, order_, prices_); !goods.empty()) {
    remedy += "buy there, too: " + names_of(goods) + "; or ";
  }
  const std::string what =
      !several ? "an order"
               : "a delivery on " + (delivery.on ? weekday_and_date(*delivery.on) : "no known day");
  add(problems::order_below_minimum(
      what, order.supplier, sum(delivery.goods), sum(order.terms.minimum),
      sum(delivery.below_minimum),
      remedy + "ask whether it takes a smaller " + (several ? "delivery" : "order")));
}

}  // namespace detail

}  // namespace platewright
