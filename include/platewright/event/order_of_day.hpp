#pragma once
// One order for several events, so that open packs are shared.

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/order.hpp"

namespace platewright {

/// The needs of several productions added up, by name of the ingredient. What is in store is there
/// once. Throws Failure as `needs_of` does, and for amounts in measures that do not mix.
inline std::vector<Need> needs_of_all(const std::vector<Production>& productions,
                                      const RecipeBook& book, const PriceList& prices) {
  std::map<std::string, Need> all;
  const auto add = [](std::optional<Amount>& total, const std::optional<Amount>& more) {
    if (more) total = total ? sum(*total, *more) : *more;
  };
  for (const Production& production : productions) {
    for (const Need& need : needs_of(production, book, prices)) {
      const auto [known, first] = all.emplace(need.ingredient, need);
      if (first) continue;
      Need& total = known->second;
      add(total.purchased, need.purchased);
      add(total.from_by_products, need.from_by_products);
      for (const Amount& used : need.used) detail::add_used(total.used, used);
      total.to_taste = total.to_taste || need.to_taste;
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

/// One order for all of them, to be there for the earliest. Throws Failure as `needs_of_all` and
/// `make_order` do.
inline Order order_of_day(const std::vector<Event>& events, const RecipeBook& book,
                          const PriceList& prices) {
  std::vector<Production> productions;
  std::optional<LocalTime> earliest;
  for (const Event& event : events) {
    productions.push_back(plan_production(event, book, prices));
    if (event.at && (!earliest || *event.at < *earliest)) earliest = event.at;
  }
  return make_order(needs_of_all(productions, book, prices), earliest, prices);
}

}  // namespace platewright
