// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/eating.hpp.

#include <algorithm>
#include <utility>

#include "platewright/event/eating.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY std::vector<std::string> among(const std::vector<AllergenFound>& found,
                                                const std::vector<std::string>& without) {
  std::vector<std::string> out;
  for (const AllergenFound& one : found) {
    if (std::find(without.begin(), without.end(), one.key) != without.end()) {
      out.push_back(one.key);
    }
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY EatingAnswer eats(const GuestKind& guests, const RecipeAllergens& dish) {
  if (guests.without.empty()) return {Eats::can, {}};
  if (auto found = detail::among(dish.found, guests.without); !found.empty()) {
    return {Eats::cannot, std::move(found)};
  }
  if (auto traces = detail::among(dish.may_contain, guests.without); !traces.empty()) {
    return {Eats::may_contain, std::move(traces)};
  }
  if (!dish.not_stated.empty()) return {Eats::not_known, dish.not_stated};
  return {Eats::can, {}};
}

PLATEWRIGHT_BODY bool has_diets(const Event& event) {
  return std::any_of(event.guests.begin(), event.guests.end(),
                     [](const GuestKind& kind) { return !kind.without.empty(); });
}

namespace detail {

PLATEWRIGHT_BODY EatingAnswer answer_for(const GuestKind& kind, const MenuLine& line,
                                         const RecipeBook& book, const AllergenTable& table) {
  return eats(kind, allergens_of(book.recipe(line.recipe), book, table));
}

PLATEWRIGHT_BODY std::string listed_keys(const std::vector<std::string>& keys) {
  std::string out;
  for (const std::string& key : keys) out += (out.empty() ? "" : ", ") + key;
  return out;
}

/// A dish for everyone, or for this kind.
PLATEWRIGHT_BODY bool is_offered(const MenuLine& line, const GuestKind& kind) {
  return line.guests.empty() || line.guests == kind.name;
}

}  // namespace detail

PLATEWRIGHT_BODY ProblemList guest_warnings(const Event& event, const RecipeBook& book,
                                            const AllergenTable& table) {
  ProblemList out;
  for (const GuestKind& kind : event.guests) {
    if (kind.without.empty() || kind.count == 0) continue;
    bool any = false;
    for (const MenuLine& line : event.menu) {
      if (!detail::is_offered(line, kind)) continue;
      const EatingAnswer answer = detail::answer_for(kind, line, book, table);
      any = any || answer.eats == Eats::can;
      if (line.guests.empty() || answer.eats != Eats::cannot) continue;
      out.add(as_warning(at(problems::dish_not_for_guests(line.recipe, kind.name,
                                                          detail::listed_keys(answer.because)),
                            line.place)));
    }
    if (any) continue;
    out.add(as_warning(
        at(problems::nothing_to_eat(kind.name, detail::listed_keys(kind.without)), event.place)));
  }
  return out;
}

}  // namespace platewright
