// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/order_remedies.hpp.

#include <algorithm>

#include "platewright/event/order_remedies.hpp"

namespace platewright {

namespace detail {

/// Whether goods of this offer can be there on the day, or so many days before it as they keep, and
/// still be ordered where the hour of ordering is known.
PLATEWRIGHT_BODY bool comes_in_time(const Purchase& offer, const OrderLine& line,
                                    const Suppliers& suppliers,
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

PLATEWRIGHT_BODY std::vector<std::string> suppliers_in_time(
    const OrderLine& line, const PriceList& prices, const std::optional<LocalTime>& ordered) {
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

PLATEWRIGHT_BODY std::optional<MorePacks> packs_to_minimum(const SupplierOrder& order,
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

PLATEWRIGHT_BODY std::vector<std::string> goods_to_move(const SupplierOrder& to, const Order& order,
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
