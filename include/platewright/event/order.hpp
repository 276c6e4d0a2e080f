// SPDX-License-Identifier: MIT
#pragma once
// What to order: whole packs and whole pieces, by supplier.

#include <optional>
#include <string>
#include <vector>

#include "platewright/event/deliveries.hpp"
#include "platewright/event/needs.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// One ingredient on an order. need <= ordered, and one pack fewer would not be enough, or would be
/// fewer than the supplier delivers.
struct OrderLine {
  std::string ingredient;
  Amount need;  ///< to buy, as purchased, in the unit of the pack's content
  Purchase purchase;
  Integer packs;   ///< of `purchase`; pieces, where it goes by the piece
  Amount ordered;  ///< packs x content
  Amount left_over;
  Money left_over_value = {};
  Money cost = {};     ///< packs x price
  Money deposit = {};  ///< packs x deposit on the container, which comes back
  /// The last day for it to be there, its midnight: that of the first use, or the day before where
  /// that is before noon. None where the event's time is not known.
  std::optional<LocalTime> deliver_by = std::nullopt;
  /// The day of the delivery, its midnight: the last on which the supplier comes and that is not
  /// behind `deliver_by`. None where that is not known, and where there is no such day.
  std::optional<LocalTime> deliver_on = std::nullopt;
  /// The last day to order for that, its midnight. None where one of the two, or how long the
  /// supplier takes, is not known.
  std::optional<LocalTime> order_by = std::nullopt;
  std::vector<std::string> used_by = {};
  std::optional<Amount> from_by_products = std::nullopt;  ///< taken off the need already
  std::optional<Amount> in_store = std::nullopt;          ///< taken off the need already
  Keeping keeping = {};

  /// Whole days from the delivery to the last day for it to be there.
  int days_early() const;
};

/// What one supplier brings on one day.
struct Delivery {
  std::optional<LocalTime> on;  ///< its midnight; none where no day is known
  Money goods;
  /// What the goods lack to the least that this supplier delivers for; nothing where it is enough.
  Money below_minimum = {};
};

/// All that goes to one supplier, by ingredient.
struct SupplierOrder {
  std::string supplier;  ///< empty where the book names none
  std::vector<OrderLine> lines;
  Money total;
  std::optional<LocalTime> deliver_by;    ///< the earliest of the lines
  std::optional<LocalTime> order_by;      ///< the earliest of the lines
  Money deposit;                          ///< on containers, beside the total
  Supplier terms = {};                    ///< what the book says of the supplier
  std::vector<Delivery> deliveries = {};  ///< by day; their goods sum to the total
  Money delivery_charges = {};            ///< for all of them, beside the total
  Money below_minimum;                    ///< what all deliveries lack together
};

/// Lines sum to their supplier's total and these to the whole. total = used + left over.
struct Order {
  std::vector<SupplierOrder> suppliers;  ///< by name
  std::vector<Need> not_ordered;         ///< free, or without an offer
  std::vector<Need> have_ready;          ///< to taste: no amount is known, or more than is ordered
  Money total;
  Money left_over_value;
  Money used_value;             ///< of what the needs take from the packs
  Money deposit;                ///< on containers, beside the total
  Money delivery_charges = {};  ///< beside the total
  std::vector<Need> all_there;  ///< in store, or left over from the cuts: nothing to buy

  /// Deposits and deliveries with it.
  Money to_pay() const { return total + deposit + delivery_charges; }
};

/// The last day for goods to be there, its midnight: that of their first use, or the day before
/// where that is before noon.
inline LocalTime delivery_day(const LocalTime& first_used) {
  return LocalTime(std::chrono::floor<std::chrono::days>(first_used - std::chrono::hours(12)));
}

/// The line for one need, its delivery not planned yet. Throws Failure for a pack that holds 0 or
/// less and for a need in another measure than the pack's.
OrderLine order_line(const Need& need, const Amount& needed, const Purchase& purchase);

namespace detail {

void add_line(OrderLine line, SupplierOrder& supplier, Order& out);

}  // namespace detail

/// The order for these needs, each by its offer; an amount of 0 is not ordered. Throws Failure as
/// `order_line` does, and where what is in store is not in the measure of the pack.
Order make_order(const std::vector<Need>& needs, const Suppliers& described);

/// The order for a production. Throws Failure as `needs_of` and `make_order` do.
inline Order make_order(const Event& event, const Production& production, const RecipeBook& book,
                        const PriceList& prices) {
  return make_order(needs_of(production, book, prices, event.at), prices.suppliers);
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/order.hpp"
#endif
