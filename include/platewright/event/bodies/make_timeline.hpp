// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/make_timeline.hpp.

#include <algorithm>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/make_timeline.hpp"

namespace platewright {

namespace detail {

/// Puts in the deliveries before the orders, and suppliers from the last to the first: what was put
/// in last comes first.
PLATEWRIGHT_BODY void add_orders(const Order& order, Timeline& timeline) {
  const auto entry_at = [&](TimelineKind kind, const LocalTime& day, const std::string& supplier) {
    TimelineEntry entry;
    entry.kind = kind;
    entry.latest = timeline.zone.day_begins(std::chrono::floor<std::chrono::days>(day));
    entry.supplier = supplier;
    timeline.entries.push_back(std::move(entry));
  };
  for (auto one = order.suppliers.rbegin(); one != order.suppliers.rend(); ++one) {
    std::map<LocalTime, std::vector<std::string>> by_day;
    for (const OrderLine& line : one->lines) {
      if (line.deliver_on) by_day[*line.deliver_on].push_back(line.ingredient);
    }
    for (const auto& [day, goods] : by_day) {
      entry_at(TimelineKind::delivery, day, one->supplier);
      timeline.entries.back().goods = goods;
    }
  }
  for (auto one = order.suppliers.rbegin(); one != order.suppliers.rend(); ++one) {
    if (!one->order_by) continue;
    entry_at(TimelineKind::order, *one->order_by, one->supplier);
    if (one->terms.cut_off) timeline.entries.back().until = one->terms.cut_off->hour;
  }
}

}  // namespace detail

PLATEWRIGHT_BODY Timeline make_timeline(const Event& event, const Production& production,
                                        const Order& order, const SafetyTable& safety) {
  if (!event.at) throw Failure(at(problems::event_without_time(event.name), event.place));
  Timeline out;
  out.served = event.at->instant();
  out.zone = event.at->zone();
  TimelineEntry serve;
  serve.kind = TimelineKind::serve;
  serve.latest = out.served;
  serve.earliest = out.served;
  out.entries.push_back(std::move(serve));
  const auto clocks = detail::add_recipes(production, out);
  detail::add_orders(order, out);
  // What was put in last comes first.
  std::reverse(out.entries.begin(), out.entries.end());
  std::stable_sort(out.entries.begin(), out.entries.end(),
                   [](const TimelineEntry& left, const TimelineEntry& right) {
                     return left.latest < right.latest;
                   });
  out.standing = detail::standing_too_long(production, out, safety);
  out.kept = detail::kept_foods(production, clocks, out, safety);
  out.waiting = detail::waiting_foods(production, clocks, safety);
  return out;
}

}  // namespace platewright
