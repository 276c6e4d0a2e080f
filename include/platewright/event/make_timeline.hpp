// SPDX-License-Identifier: MIT
#pragma once
// Works a timeline out.

#include <algorithm>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/kept_food.hpp"
#include "platewright/event/order.hpp"
#include "platewright/event/standing_food.hpp"

namespace platewright {

namespace detail {

/// Puts in the deliveries before the orders, and suppliers from the last to the first: what was put
/// in last comes first.
inline void add_orders(const Order& order, Timeline& timeline) {
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

/// What has to begin when, in elapsed time: a step of 12 h takes 12 h also in the night in which
/// the clocks are turned. Steps of a method follow each other; the oven, and then the rest, come
/// at the step that is marked for it, or after all steps where none is. A step behind it (carving,
/// a gravy) begins when the rest is over: one that is really done during the rest makes the plan
/// early, never late. A sub-recipe is ready when the step begins that says that it uses it, or,
/// where no step does, before anything of the recipe that uses it. Steps without a time are not
/// listed. Orders and deliveries stand at the beginning of their last day, one delivery for each
/// supplier and day. By the limits of `safety`, if it has any, dishes are named that stand too long
/// after the oven. Throws Failure for an event that does not say when the food is served, and for a
/// step that takes more than a year.
inline Timeline make_timeline(const Event& event, const Production& production, const Order& order,
                              const SafetyTable& safety = {}) {
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
