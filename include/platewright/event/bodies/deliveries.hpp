// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/deliveries.hpp.

#include <algorithm>

#include "platewright/event/deliveries.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<LocalTime> last_delivery(const Supplier& supplier,
                                                        const LocalTime& latest, bool closed_too) {
  const std::chrono::local_days last = day_part(latest);
  for (int back = 0; back <= most_days_before_use; ++back) {
    const std::chrono::local_days day = last - std::chrono::days(back);
    if (!supplier.comes_on(day)) continue;
    if (closed_too || !supplier.closed_on(day)) return LocalTime(day);
  }
  return std::nullopt;
}

PLATEWRIGHT_BODY std::optional<int> days_to_order(const Supplier& supplier,
                                                  const Purchase& purchase) {
  if (!supplier.cut_off) return purchase.days;
  return std::max(supplier.cut_off->days, purchase.days.value_or(0));
}

PLATEWRIGHT_BODY std::optional<LocalTime> last_order(const Supplier& supplier,
                                                     const Purchase& purchase,
                                                     const LocalTime& delivery) {
  const auto days = days_to_order(supplier, purchase);
  if (!days) return std::nullopt;
  std::chrono::local_days day = day_part(delivery) - std::chrono::days(*days);
  for (int back = 0; back < most_days_before_use && supplier.closed_on(day); ++back) {
    day -= std::chrono::days(1);
  }
  return LocalTime(day);
}

PLATEWRIGHT_BODY bool is_in_time(const LocalTime& order_by, const Supplier& supplier,
                                 const LocalTime& now) {
  const bool has_hour = supplier.cut_off && supplier.cut_off->hour;
  if (!has_hour) return day_part(now) <= day_part(order_by);
  return now <= order_by + *supplier.cut_off->hour;
}

PLATEWRIGHT_BODY std::optional<LocalTime> first_delivery(const Supplier& supplier,
                                                         const Purchase& purchase,
                                                         const LocalTime& now) {
  for (int days = 0; days <= most_days_before_use; ++days) {
    const std::chrono::local_days day = day_part(now) + std::chrono::days(days);
    if (!supplier.comes_on(day) || supplier.closed_on(day)) continue;
    const auto order_by = last_order(supplier, purchase, LocalTime(day));
    if (!order_by) return std::nullopt;
    if (is_in_time(*order_by, supplier, now)) return LocalTime(day);
  }
  return std::nullopt;
}

}  // namespace platewright
