// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/order_of_day.hpp.

#include <algorithm>
#include <string>
#include <utility>

#include "platewright/event/order_of_day.hpp"

namespace platewright {

namespace detail {

/// Goods are added up where they are bought alike: by one offer at one price, or by none.
PLATEWRIGHT_BODY bool bought_alike(const Need& left, const Need& right) {
  if (left.ingredient != right.ingredient) return false;
  if (!left.offer || !right.offer) return left.offer.has_value() == right.offer.has_value();
  return same_terms(*left.offer, *right.offer);
}

PLATEWRIGHT_BODY void add_amount(std::optional<Amount>& total, const std::optional<Amount>& more) {
  if (more) total = total ? sum(*total, *more) : *more;
}

PLATEWRIGHT_BODY void add_need(const Need& need, Need& total) {
  add_amount(total.purchased, need.purchased);
  add_amount(total.from_by_products, need.from_by_products);
  for (const Amount& used : need.used) add_used(total.used, used);
  total.to_taste = total.to_taste || need.to_taste;
  total.free = total.free || need.free;
  keep_earlier(total.first_used, need.first_used);
  for (const std::string& user : need.used_by) {
    if (std::find(total.used_by.begin(), total.used_by.end(), user) == total.used_by.end()) {
      total.used_by.push_back(user);
    }
  }
}

/// What is in store is there once: each of the needs of one ingredient leaves the rest to the next.
PLATEWRIGHT_BODY void share_store(std::vector<Need>::iterator need,
                                  std::vector<Need>::iterator end) {
  std::optional<Amount> left;
  for (auto other = need; other != end && !left; ++other) left = other->in_store;
  for (; need != end; ++need) {
    need->in_store = left;
    if (!left || !need->purchased) continue;
    Amount taken = *need->purchased;
    if (need->from_by_products) taken.number -= need->from_by_products->number;
    left->number -= in_unit(taken, left->unit).number;
    if (left->number <= 0) left = std::nullopt;
  }
}

/// The earliest first, those whose time is not known last, each day's by name: so that the order in
/// which the events were named changes nothing.
PLATEWRIGHT_BODY std::vector<const Occasion*> by_time(const std::vector<Occasion>& occasions) {
  std::vector<const Occasion*> out;
  for (const Occasion& occasion : occasions) out.push_back(&occasion);
  std::stable_sort(out.begin(), out.end(), [](const Occasion* left, const Occasion* right) {
    const Event& one = left->event;
    const Event& other = right->event;
    if (one.at.has_value() != other.at.has_value()) return one.at.has_value();
    if (one.at && (*one.at < *other.at || *other.at < *one.at)) return *one.at < *other.at;
    return one.name < other.name;
  });
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY std::vector<Need> needs_of_all(const std::vector<Occasion>& occasions) {
  std::vector<Need> all;
  for (const Occasion* occasion : detail::by_time(occasions)) {
    const Production production =
        plan_production(occasion->event, occasion->book, occasion->prices);
    for (Need& need : needs_of(production, occasion->book, occasion->prices, occasion->event.at)) {
      const auto known = std::find_if(all.begin(), all.end(), [&](const Need& other) {
        return detail::bought_alike(other, need);
      });
      if (known == all.end()) {
        all.push_back(std::move(need));
      } else {
        detail::add_need(need, *known);
      }
    }
  }
  std::stable_sort(all.begin(), all.end(), [](const Need& left, const Need& right) {
    return left.ingredient < right.ingredient;
  });
  for (auto need = all.begin(); need != all.end();) {
    const auto next = std::find_if(
        need, all.end(), [&](const Need& other) { return other.ingredient != need->ingredient; });
    detail::share_store(need, next);
    need = next;
  }
  return all;
}

PLATEWRIGHT_BODY Suppliers suppliers_of_all(const std::vector<Occasion>& occasions) {
  Suppliers out;
  for (const Occasion* occasion : detail::by_time(occasions)) {
    for (const auto& [name, supplier] : occasion->prices.suppliers) {
      const auto [known, is_new] = out.emplace(name, supplier);
      if (is_new) continue;
      Supplier& one = known->second;
      one.minimum = std::max(one.minimum, supplier.minimum);
      one.delivery_charge = std::max(one.delivery_charge, supplier.delivery_charge);
      one.closed.insert(one.closed.end(), supplier.closed.begin(), supplier.closed.end());
      one.one_delivery = one.one_delivery || supplier.one_delivery;
    }
  }
  return out;
}

PLATEWRIGHT_BODY Order order_of_day(const std::vector<Occasion>& occasions) {
  for (const Occasion& occasion : occasions) {
    const Currency& first = occasions.front().prices.currency;
    const Currency& other = occasion.prices.currency;
    if (other != first) {
      throw Failure(problems::exchange_rate_missing(other.code(), first.code()));
    }
  }
  return make_order(needs_of_all(occasions), suppliers_of_all(occasions));
}

PLATEWRIGHT_BODY Order order_of_day(const std::vector<Event>& events, const RecipeBook& book,
                                    const PriceList& prices) {
  std::vector<Occasion> occasions;
  for (const Event& event : events) occasions.push_back({event, book, prices});
  return order_of_day(occasions);
}

}  // namespace platewright
