#pragma once
// One order for several events, so that open packs are shared.

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/order.hpp"

namespace platewright {

/// The needs of several events added up, by name of the ingredient; it is first used when the first
/// of them uses it. What is in store is there once. Throws Failure as `plan_production` and
/// `needs_of` do, and for amounts in measures that do not mix.
inline std::vector<Need> needs_of_all(const std::vector<Event>& events, const RecipeBook& book,
                                      const PriceList& prices) {
  std::map<std::string, Need> all;
  const auto add = [](std::optional<Amount>& total, const std::optional<Amount>& more) {
    if (more) total = total ? sum(*total, *more) : *more;
  };
  for (const Event& event : events) {
    const Production production = plan_production(event, book, prices);
    for (const Need& need : needs_of(production, book, prices, event.at)) {
      const auto [known, first] = all.emplace(need.ingredient, need);
      if (first) continue;
      Need& total = known->second;
      add(total.purchased, need.purchased);
      add(total.from_by_products, need.from_by_products);
      for (const Amount& used : need.used) detail::add_used(total.used, used);
      total.to_taste = total.to_taste || need.to_taste;
      detail::keep_earlier(total.first_used, need.first_used);
      for (const std::string& user : need.used_by) {
        if (std::find(total.used_by.begin(), total.used_by.end(), user) == total.used_by.end()) {
          total.used_by.push_back(user);
        }
      }
    }
  }
  std::vector<Need> out;
  for (auto& [name, need] : all) out.push_back(std::move(need));
  return out;
}

/// One order for all of them. Throws Failure as `needs_of_all` and `make_order` do.
inline Order order_of_day(const std::vector<Event>& events, const RecipeBook& book,
                          const PriceList& prices) {
  return make_order(needs_of_all(events, book, prices), prices);
}

}  // namespace platewright
