// SPDX-License-Identifier: MIT
#pragma once
// Kitchens and occasions made up at random, for the property tests.

#include <rapidcheck.h>

#include <string>

#include "platewright/event/event.hpp"
#include "support/kitchen.hpp"

namespace platewright::test {

/// A fraction above 0, up to `most`.
inline Rational random_number(std::int64_t most) {
  return fraction(*rc::gen::inRange<std::int64_t>(1, most * 12),
                  *rc::gen::inRange<std::int64_t>(1, 13));
}

inline Amount random_weight() {
  return {random_number(20), amount(*rc::gen::element("1 lb", "1 kg", "1 oz", "1 g")).unit};
}

namespace detail {

inline void add_ingredient(TestKitchen& kitchen, const std::string& name) {
  const Rational yield = fraction(*rc::gen::inRange<std::int64_t>(1, 21), 20);
  const Amount content = random_weight();
  const Money price = money(fraction(*rc::gen::inRange<std::int64_t>(1, 10000), 100));
  const auto supplier = *rc::gen::element<std::string>("the market", "the butcher", "");
  kitchen.add(ingredient(name, yield), builders::pack(content, price, supplier));
  kitchen.book.ingredients.change(name, [&](Ingredient& own) { own.allergens = {name}; });
}

inline RecipeLine random_line(std::string name) {
  return line(std::move(name), random_weight());
}

}  // namespace detail

/// Five ingredients; six recipes that serve portions of a weight and use any of the recipes before
/// them. Every line follows the batch in proportion.
inline TestKitchen random_kitchen() {
  TestKitchen out;
  for (int i = 0; i < 5; ++i) detail::add_ingredient(out, "ingredient " + std::to_string(i));
  for (int i = 0; i < 6; ++i) {
    Recipe recipe =
        recipe_for("recipe " + std::to_string(i), *rc::gen::inRange<std::int64_t>(1, 40), {});
    recipe.makes.portion = random_weight();
    const int bought = *rc::gen::inRange(1, 4);
    for (int j = 0; j < bought; ++j) {
      const std::string name = "ingredient " + std::to_string(*rc::gen::inRange(0, 5));
      recipe.lines.push_back(detail::random_line(name));
    }
    const int made = i == 0 ? 0 : *rc::gen::inRange(0, 3);
    for (int j = 0; j < made; ++j) {
      const std::string name = "recipe " + std::to_string(*rc::gen::inRange(0, i));
      recipe.lines.push_back(detail::random_line(name));
    }
    out.add(std::move(recipe));
  }
  return out;
}

/// A menu of one to three recipes of a random kitchen.
inline Event random_event() {
  Event out;
  out.name = "an occasion";
  out.at = read_local_time("2027-10-09 18:30");
  out.guests = {
      {"adults", *rc::gen::inRange<std::int64_t>(1, 300), 1, 1},
      {"children", *rc::gen::inRange<std::int64_t>(0, 50), fraction(1, 2), fraction(1, 3)}};
  out.over = fraction(*rc::gen::inRange<std::int64_t>(0, 21), 100);
  const int dishes = *rc::gen::inRange(1, 4);
  for (int i = 0; i < dishes; ++i) {
    const std::string name = "recipe " + std::to_string(*rc::gen::inRange(0, 6));
    out.menu.push_back({name, fraction(*rc::gen::inRange<std::int64_t>(1, 11), 10), {}});
  }
  return out;
}

}  // namespace platewright::test
