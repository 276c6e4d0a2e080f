// SPDX-License-Identifier: MIT
#pragma once
// What would do where an order can't be had as it is planned.

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "platewright/costing/price_list.hpp"
#include "platewright/event/order.hpp"

namespace platewright {

namespace detail {

/// Whether goods of this offer can be there on the day, or so many days before it as they keep, and
/// still be ordered where the hour of ordering is known.
inline bool comes_in_time(const Purchase& offer, const OrderLine& line, const Suppliers& suppliers,
                          const std::optional<LocalTime>& ordered) {
  const Supplier terms = supplier_called(offer.supplier, suppliers);
  const auto day = last_delivery(terms, *line.deliver_by);
  if (!day) return false;
  const auto early = (day_part(*line.deliver_by) - day_part(*day)).count();
  if (line.keeping.days && early > *line.keeping.days) return false;
  if (!ordered) return true;
  const auto order_by = last_order(terms, offer, *day);
  return order_by && is_in_time(*order_by, terms, *ordered);
}

}  // namespace detail

/// The other suppliers in the book that can have the goods of a line there in time, each once, in
/// the order of their offers. The line knows the day by which they have to be there.
inline std::vector<std::string> suppliers_in_time(const OrderLine& line, const PriceList& prices,
                                                  const std::optional<LocalTime>& ordered) {
  std::vector<std::string> out;
  const PriceEntry* entry = prices.find(line.ingredient);
  if (entry == nullptr) return out;
  for (const Purchase& offer : entry->purchases) {
    if (offer.supplier == line.purchase.supplier || offer.supplier.empty()) continue;
    if (std::find(out.begin(), out.end(), offer.supplier) != out.end()) continue;
    if (detail::comes_in_time(offer, line, prices.suppliers, ordered)) {
      out.push_back(offer.supplier);
    }
  }
  return out;
}

/// More of what is ordered from a supplier already.
struct MorePacks {
  const OrderLine* line;  ///< of the order asked about, which must live longer
  Integer packs;
  Money cost;
};

/// The least that fills a delivery of this order up to its minimum by more of one of its lines;
/// nothing where none has a price.
inline std::optional<MorePacks> packs_to_minimum(const SupplierOrder& order,
                                                 const Delivery& delivery) {
  std::optional<MorePacks> least;
  for (const OrderLine& line : order.lines) {
    if (line.deliver_on != delivery.on || line.purchase.price <= Money()) continue;
    const Integer packs = ceiling_of(delivery.below_minimum / line.purchase.price);
    const Money cost = line.purchase.price * Rational(packs);
    if (!least || cost < least->cost) least = MorePacks{&line, packs, cost};
  }
  return least;
}

/// Goods of the order that are bought elsewhere, and that this supplier offers too.
inline std::vector<std::string> goods_to_move(const SupplierOrder& to, const Order& order,
                                              const PriceList& prices) {
  std::vector<std::string> out;
  for (const SupplierOrder& other : order.suppliers) {
    if (other.supplier == to.supplier) continue;
    for (const OrderLine& line : other.lines) {
      const PriceEntry* entry = prices.find(line.ingredient);
      if (entry == nullptr) continue;
      const bool offered =
          std::any_of(entry->purchases.begin(), entry->purchases.end(),
                      [&](const Purchase& offer) { return offer.supplier == to.supplier; });
      if (offered) out.push_back(line.ingredient);
    }
  }
  return out;
}

}  // namespace platewright
