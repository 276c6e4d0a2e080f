// SPDX-License-Identifier: MIT
#pragma once
// What of an order can't be had as it is planned, as warnings: of deliveries and of minimums.

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/margin_warnings.hpp"
#include "platewright/event/order_remedies.hpp"
#include "platewright/event/safety_warnings.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/orders.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// `Tue 2027-10-05`.
inline std::string weekday_and_date(const LocalTime& day) {
  return weekday_text(day) + " " + date_text(day);
}

namespace detail {

/// Goods of one supplier that are in the same case: said once, with all their names.
struct AlikeLines {
  std::vector<const OrderLine*> lines;

  std::string names() const;
};

class OrderCheck {
 public:
  OrderCheck(const Order& order, const PriceList& prices, std::optional<LocalTime> ordered,
             Place place);

  ProblemList run();

 private:
  void add(const Problem& problem) { problems_.add(as_warning(at(problem, place_))); }

  /// The lines that are in a case, by the days that it speaks of.
  using ByDays =
      std::map<std::pair<std::optional<LocalTime>, std::optional<LocalTime>>, AlikeLines>;
  static ByDays alike(const SupplierOrder& order,
                      const std::function<bool(const OrderLine&)>& in_case);

  /// `order "lamb leg" from "the butcher", which can have it there in time; or OTHERWISE`.
  std::string remedy(const AlikeLines& lines, const std::string& otherwise) const;

  static std::string instead(const OrderLine& line);

  void check_days(const SupplierOrder& order);

  void check_hour(const SupplierOrder& order);

  void check_minimum(const SupplierOrder& order);

  std::string sum(const Money& money) const { return sum_of_money(money, prices_.currency); }

  void check_delivery(const SupplierOrder& order, const Delivery& delivery);

  const Order& order_;
  const PriceList& prices_;
  std::optional<LocalTime> ordered_;
  Place place_;
  ProblemList problems_;
};

}  // namespace detail

/// A warning for each delivery that is not in time or comes on an earlier day since the supplier is
/// closed, for goods that wait longer than they keep, for each delivery below its supplier's
/// minimum and, where it is known when it is `ordered`, for what can't be ordered any more.
/// `prices` has the other offers, for what would do. It never fails.
inline ProblemList order_warnings(const Order& order, const PriceList& prices, const Place& event,
                                  const std::optional<LocalTime>& ordered = std::nullopt) {
  return detail::OrderCheck(order, prices, ordered, event).run();
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/order_warnings.hpp"
#endif
