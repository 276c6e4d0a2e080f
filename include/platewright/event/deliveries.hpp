// SPDX-License-Identifier: MIT
#pragma once
// On which day goods come, and by when they are ordered.

#include <chrono>
#include <optional>

#include "platewright/costing/purchase.hpp"
#include "platewright/costing/supplier.hpp"
#include "platewright/event/local_time.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// How far back a delivery day is looked for: whoever is closed for longer does not deliver.
inline constexpr int most_days_before_use = 60;

inline std::chrono::local_days day_part(const LocalTime& time) {
  return std::chrono::floor<std::chrono::days>(time);
}

/// The last day, its midnight, on which the supplier comes and that is not behind `latest`; nothing
/// where there is none within `most_days_before_use`. `closed_too` passes over no closed day.
std::optional<LocalTime> last_delivery(const Supplier& supplier, const LocalTime& latest,
                                       bool closed_too = false);

/// The whole days between order and delivery: what the offer says or the supplier does, the more of
/// the two; nothing where neither is known.
std::optional<int> days_to_order(const Supplier& supplier, const Purchase& purchase);

/// The last day, its midnight, to order what comes on `delivery`; on a closed day no one takes an
/// order, so that it is the day before. Nothing where the days between are not known.
std::optional<LocalTime> last_order(const Supplier& supplier, const Purchase& purchase,
                                    const LocalTime& delivery);

/// Whether an order by that day can still be given at `now`: by the supplier's hour of it, all day
/// where there is none.
bool is_in_time(const LocalTime& order_by, const Supplier& supplier, const LocalTime& now);

/// The first day on which the supplier comes with what is ordered at `now`; nothing where the days
/// between are not known, or there is none within `most_days_before_use`.
std::optional<LocalTime> first_delivery(const Supplier& supplier, const Purchase& purchase,
                                        const LocalTime& now);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/deliveries.hpp"
#endif
