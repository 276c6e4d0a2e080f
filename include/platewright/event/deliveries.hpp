// SPDX-License-Identifier: MIT
#pragma once
// On which day goods come, and by when they are ordered.

#include <algorithm>
#include <chrono>
#include <optional>

#include "platewright/costing/purchase.hpp"
#include "platewright/costing/supplier.hpp"
#include "platewright/event/local_time.hpp"

namespace platewright {

/// How far back a delivery day is looked for: whoever is closed for longer does not deliver.
inline constexpr int most_days_before_use = 60;

inline std::chrono::local_days day_part(const LocalTime& time) {
  return std::chrono::floor<std::chrono::days>(time);
}

/// The last day, its midnight, on which the supplier comes and that is not behind `latest`; nothing
/// where there is none within `most_days_before_use`. `closed_too` passes over no closed day.
inline std::optional<LocalTime> last_delivery(const Supplier& supplier, const LocalTime& latest,
                                              bool closed_too = false) {
  const std::chrono::local_days last = day_part(latest);
  for (int back = 0; back <= most_days_before_use; ++back) {
    const std::chrono::local_days day = last - std::chrono::days(back);
    if (!supplier.comes_on(day)) continue;
    if (closed_too || !supplier.closed_on(day)) return LocalTime(day);
  }
  return std::nullopt;
}

/// The whole days between order and delivery: what the offer says or the supplier does, the more of
/// the two; nothing where neither is known.
inline std::optional<int> days_to_order(const Supplier& supplier, const Purchase& purchase) {
  if (!supplier.cut_off) return purchase.days;
  return std::max(supplier.cut_off->days, purchase.days.value_or(0));
}

/// The last day, its midnight, to order what comes on `delivery`; on a closed day no one takes an
/// order, so that it is the day before. Nothing where the days between are not known.
inline std::optional<LocalTime> last_order(const Supplier& supplier, const Purchase& purchase,
                                           const LocalTime& delivery) {
  const auto days = days_to_order(supplier, purchase);
  if (!days) return std::nullopt;
  std::chrono::local_days day = day_part(delivery) - std::chrono::days(*days);
  for (int back = 0; back < most_days_before_use && supplier.closed_on(day); ++back) {
    day -= std::chrono::days(1);
  }
  return LocalTime(day);
}

/// Whether an order by that day can still be given at `now`: by the supplier's hour of it, all day
/// where there is none.
inline bool is_in_time(const LocalTime& order_by, const Supplier& supplier, const LocalTime& now) {
  const bool has_hour = supplier.cut_off && supplier.cut_off->hour;
  if (!has_hour) return day_part(now) <= day_part(order_by);
  return now <= order_by + *supplier.cut_off->hour;
}

/// The first day on which the supplier comes with what is ordered at `now`; nothing where the days
/// between are not known, or there is none within `most_days_before_use`.
inline std::optional<LocalTime> first_delivery(const Supplier& supplier, const Purchase& purchase,
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
