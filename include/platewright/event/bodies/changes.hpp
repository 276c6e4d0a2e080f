// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/changes.hpp.

#include <algorithm>
#include <cstddef>
#include <vector>

#include "platewright/event/changes.hpp"

namespace platewright {

namespace detail {

struct Sides {
  std::string_view before;
  std::string_view after;
};

/// The two sides of the last `=`. Throws Failure where one of them is missing.
PLATEWRIGHT_BODY Sides sides_of(std::string_view text, std::string_view example) {
  const std::size_t sign = text.rfind('=');
  const auto tidy = [](std::string_view side) {
    while (!side.empty() && side.front() == ' ') side.remove_prefix(1);
    while (!side.empty() && side.back() == ' ') side.remove_suffix(1);
    return side;
  };
  const Sides out{tidy(text.substr(0, sign)),
                  sign == std::string_view::npos ? "" : tidy(text.substr(sign + 1))};
  if (out.before.empty() || out.after.empty()) {
    throw Failure(problems::change_malformed(text, example));
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY PriceChange read_price_change(std::string_view text, const UnitTable& units,
                                               MeasuringSystem system) {
  const detail::Sides sides = detail::sides_of(text, "lamb leg=+12 %");
  PriceChange out{std::string(sides.before), 1, std::nullopt, std::nullopt};
  const char sign = sides.after.front();
  if (sign != '+' && sign != '-') {
    const std::size_t per = sides.after.find(" per ");
    out.price = Money::of(read_number(sides.after.substr(0, per)), units::currency_unit);
    if (per != std::string_view::npos) {
      out.per = read_amount("1 " + std::string(sides.after.substr(per + 5)), units, system).unit;
    }
    return out;
  }
  // `+12` could be twelve per cent, twelve times as much or twelve more.
  if (sides.after.back() != '%') {
    throw Failure(problems::change_malformed(text, "lamb leg=+12 %"));
  }
  const Rational share = read_share(sides.after.substr(1));
  out.factor = sign == '+' ? Rational(1 + share) : Rational(1 - share);
  if (out.factor < 0) {
    throw Failure(
        problems::share_out_of_range("a fall of a price", sides.after.substr(1), "at most 100 %"));
  }
  return out;
}

PLATEWRIGHT_BODY Swap read_swap(std::string_view text) {
  const detail::Sides sides = detail::sides_of(text, "lamb leg=mutton leg");
  return {std::string(sides.before), std::string(sides.after)};
}

PLATEWRIGHT_BODY void change_price(Occasion& occasion, const PriceChange& change) {
  const Ingredient& ingredient = occasion.book.ingredient(change.ingredient);
  const auto entry = occasion.prices.entries.find(change.ingredient);
  if (entry == occasion.prices.entries.end() || entry->second.purchases.empty()) {
    const bool known = entry != occasion.prices.entries.end();
    throw Failure(no_price_of(change.ingredient, known ? &entry->second : nullptr));
  }
  for (Purchase& purchase : entry->second.purchases) {
    if (!change.price) {
      purchase.price = purchase.price * change.factor;
    } else if (change.per) {
      const Amount content = convert(purchase.content, *change.per, ingredient.weights).amount;
      purchase.price = *change.price * content.number;
    } else if (purchase.by_the_piece) {
      throw Failure(problems::change_of_a_piece(change.ingredient, purchase.content.unit.name()));
    } else {
      purchase.price = *change.price;
    }
  }
}

PLATEWRIGHT_BODY void change_guests(Event& event, const Rational& heads) {
  const Rational before = guest_count(event);
  if (heads <= 0 || !is_whole(heads) || before <= 0) {
    throw Failure(problems::number_not_positive("a whole number of guests", as_exact(heads)));
  }
  std::vector<Rational> counts;
  for (const GuestKind& kind : event.guests) counts.push_back(kind.count * heads / before);
  const std::vector<Rational> whole = apportion(counts, 1);
  for (std::size_t i = 0; i < whole.size(); ++i) event.guests[i].count = whole[i];
}

namespace detail {

/// Purchased weight of one cut that serves as much as 1 of the other; 1 for all that is no cut
/// written as purchased.
PLATEWRIGHT_BODY Rational purchased_for(const RecipeLine& line, const Ingredient& from,
                                        const Ingredient& to) {
  const bool cuts = from.is_cut && to.is_cut && stage_of(line, from) == Stage::purchased;
  return cuts ? from.ladder.yield() / to.ladder.yield() : Rational(1);
}

/// The new cut in one line. Whole pieces stay as many and as heavy as the supplier delivers them
/// and serve other numbers of portions; of every other line more or less is taken.
PLATEWRIGHT_BODY void swap_ingredient(const RecipeBook& book, Recipe& user, RecipeLine& line,
                                      const Ingredient& to) {
  const Rational factor = purchased_for(line, book.ingredient(line.name), to);
  if (&line == piece_line(user, book)) {
    if (user.makes.portions) user.makes.portions = *user.makes.portions / factor;
  } else {
    line.amount = scaled(line.amount, factor);
  }
}

/// What else of the recipe names the line: shares of it, and steps that use it.
PLATEWRIGHT_BODY void rename_in(Recipe& recipe, const Swap& swap) {
  for (RecipeLine& line : recipe.lines) {
    const WeightShare* share = line.amount.share();
    if (share == nullptr) continue;
    WeightShare renamed = *share;
    std::replace(renamed.of.begin(), renamed.of.end(), swap.from, swap.to);
    line.amount = renamed;
  }
  for (MethodStep& step : recipe.steps) {
    std::replace(step.uses.begin(), step.uses.end(), swap.from, swap.to);
  }
}

PLATEWRIGHT_BODY bool has_line(const Recipe& recipe, const std::string& name) {
  return std::any_of(recipe.lines.begin(), recipe.lines.end(),
                     [&](const RecipeLine& line) { return line.name == name; });
}

PLATEWRIGHT_BODY void swap_in_recipe(const RecipeBook& book, Recipe& recipe, const Swap& swap) {
  for (RecipeLine& line : recipe.lines) {
    if (line.name != swap.from) continue;
    if (book.find_recipe(swap.to) == nullptr && book.recipe_of(line) == nullptr) {
      swap_ingredient(book, recipe, line, book.ingredient(swap.to));
    }
  }
  for (RecipeLine& line : recipe.lines) {
    if (line.name == swap.from) line.name = swap.to;
  }
  rename_in(recipe, swap);
}

}  // namespace detail

PLATEWRIGHT_BODY void swap_in(Occasion& occasion, const Swap& swap) {
  const RecipeBook book = occasion.book;
  if (book.find_recipe(swap.to) == nullptr) book.ingredient(swap.to);
  if (book.find_recipe(swap.from) == nullptr) book.ingredient(swap.from);
  bool met = false;
  for (const auto& [name, recipe] : book.recipes) {
    if (!detail::has_line(recipe, swap.from)) continue;
    met = true;
    occasion.book.recipes.change(
        name, [&](Recipe& changed) { detail::swap_in_recipe(book, changed, swap); });
  }
  for (MenuLine& line : occasion.event.menu) {
    if (line.recipe != swap.from) continue;
    line.recipe = swap.to;
    met = true;
  }
  if (!met) throw Failure(problems::swap_of_nothing(swap.from));
}

}  // namespace platewright
