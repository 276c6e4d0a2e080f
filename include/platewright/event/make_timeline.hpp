#pragma once
// Works a timeline out.

#include <algorithm>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/order.hpp"
#include "platewright/event/walk_back.hpp"

namespace platewright {

namespace detail {

/// Puts in the deliveries before the orders, and suppliers from the last to the first: what was put
/// in last comes first.
inline void add_orders(const Order& order, Timeline& timeline) {
  const auto entry_at = [&](TimelineKind kind, const LocalTime& day, const std::string& supplier) {
    TimelineEntry entry;
    entry.kind = kind;
    entry.latest = day;
    entry.supplier = supplier;
    timeline.entries.push_back(std::move(entry));
  };
  for (auto one = order.suppliers.rbegin(); one != order.suppliers.rend(); ++one) {
    std::map<LocalTime, std::vector<std::string>> by_day;
    for (const OrderLine& line : one->lines) {
      if (line.deliver_by) by_day[*line.deliver_by].push_back(line.ingredient);
    }
    for (const auto& [day, goods] : by_day) {
      entry_at(TimelineKind::delivery, day, one->supplier);
      timeline.entries.back().goods = goods;
    }
  }
  for (auto one = order.suppliers.rbegin(); one != order.suppliers.rend(); ++one) {
    if (one->order_by) entry_at(TimelineKind::order, *one->order_by, one->supplier);
  }
}

}  // namespace detail

/// What has to begin when. Steps of a method follow each other; the oven, and then the rest, come
/// at the step that is marked for it, or after all steps where none is. A step behind it (carving,
/// a gravy) begins when the rest is over: one that is really done during the rest makes the plan
/// early, never late. A sub-recipe is ready before anything of the recipe that uses it begins.
/// Steps without a time are not listed. Orders and deliveries stand at midnight of their last day,
/// one delivery for each supplier and day. Throws Failure for an event that does not say when the
/// food is served, and for a step that takes more than a year.
inline Timeline make_timeline(const Event& event, const Production& production,
                              const Order& order) {
  if (!event.at) throw Failure(at(problems::event_without_time(event.name), event.place));
  Timeline out;
  out.served = *event.at;
  TimelineEntry serve;
  serve.kind = TimelineKind::serve;
  serve.latest = out.served;
  serve.earliest = out.served;
  out.entries.push_back(std::move(serve));
  detail::add_recipes(production, out);
  detail::add_orders(order, out);
  // What was put in last comes first.
  std::reverse(out.entries.begin(), out.entries.end());
  std::stable_sort(out.entries.begin(), out.entries.end(),
                   [](const TimelineEntry& left, const TimelineEntry& right) {
                     return left.latest < right.latest;
                   });
  return out;
}

}  // namespace platewright
