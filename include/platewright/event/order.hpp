#pragma once
// What to order: whole packs and whole pieces, by supplier.

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/needs.hpp"

namespace platewright {

/// One ingredient on an order. need <= ordered, and one pack fewer would not be enough.
struct OrderLine {
  std::string ingredient;
  Amount need;  ///< as purchased, in the unit of the pack's content
  Purchase purchase;
  Integer packs;   ///< of `purchase`; pieces, where it goes by the piece
  Amount ordered;  ///< packs x content
  Money cost;      ///< packs x price
  Amount left_over;
  Money left_over_value;
  /// The last day to order: its midnight. None where the event's time or the supplier's days are
  /// not known.
  std::optional<LocalTime> order_by;
  std::vector<std::string> used_by;
};

/// All that goes to one supplier, by ingredient.
struct SupplierOrder {
  std::string supplier;  ///< empty where the book names none
  std::vector<OrderLine> lines;
  Money total;
  std::optional<LocalTime> order_by;  ///< the earliest of the lines
};

/// Lines sum to their supplier's total and these to the whole. total = used + left over.
struct Order {
  std::vector<SupplierOrder> suppliers;  ///< by name
  std::vector<Need> not_ordered;         ///< free, or without an offer
  std::vector<Need> have_ready;          ///< to taste: no amount is known, or more than is ordered
  Money total;
  Money left_over_value;
  Money used_value;  ///< of what the needs take from the packs
};

/// The line for one need. Throws Failure for a pack that holds 0 or less and for a need in another
/// measure than the pack's.
inline OrderLine order_line(const Need& need, const Amount& needed, const Purchase& purchase,
                            const std::optional<LocalTime>& served) {
  detail::check_content(purchase);
  OrderLine out;
  out.ingredient = need.ingredient;
  out.purchase = purchase;
  out.used_by = need.used_by;
  out.need = in_unit(needed, purchase.content.unit);
  out.packs = ceiling_of(out.need.number / purchase.content.number);
  out.ordered = scaled(purchase.content, Rational(out.packs));
  out.cost = purchase.price * Rational(out.packs);
  out.left_over = Amount{out.ordered.number - out.need.number, out.need.unit};
  out.left_over_value = price_of(out.left_over, purchase);
  if (served && purchase.days) {
    out.order_by = LocalTime(std::chrono::floor<std::chrono::days>(*served)) -
                   std::chrono::days(*purchase.days);
  }
  return out;
}

/// The order for a production. Every ingredient goes to its preferred (first) offer; an amount of 0
/// is not ordered. Throws Failure as `needs_of` and `order_line` do.
inline Order make_order(const Event& event, const Production& production, const RecipeBook& book,
                        const PriceList& prices) {
  Order out;
  std::map<std::string, SupplierOrder> suppliers;
  for (const Need& need : needs_of(production, book, prices)) {
    if (need.to_taste) out.have_ready.push_back(need);
    if (!need.purchased) {
      if (!need.used.empty()) out.not_ordered.push_back(need);
      continue;
    }
    if (need.purchased->number == 0) continue;
    const Purchase& purchase = prices.find(need.ingredient)->purchases.front();
    OrderLine line = order_line(need, *need.purchased, purchase, event.at);
    SupplierOrder& order = suppliers[purchase.supplier];
    order.supplier = purchase.supplier;
    order.total += line.cost;
    out.total += line.cost;
    out.left_over_value += line.left_over_value;
    if (line.order_by && (!order.order_by || *line.order_by < *order.order_by)) {
      order.order_by = line.order_by;
    }
    order.lines.push_back(std::move(line));
  }
  for (auto& [name, order] : suppliers) out.suppliers.push_back(std::move(order));
  out.used_value = out.total - out.left_over_value;
  return out;
}

}  // namespace platewright
