// SPDX-License-Identifier: MIT
#pragma once
// What a whole production takes from the store, ingredient by ingredient.

#include <optional>
#include <string>
#include <vector>

#include "platewright/event/walk_back.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// All that is needed of one ingredient.
struct Need {
  std::string ingredient;
  /// As purchased, in the unit of the preferred offer's content; nothing where there is no offer.
  std::optional<Amount> purchased;
  /// As the recipes have it, one sum for each measure: what is known where there is no offer.
  std::vector<Amount> used;
  std::optional<Purchase> offer = std::nullopt;  ///< the preferred one, which it is bought by
  bool free = false;                             ///< nothing is paid for it
  bool to_taste = false;  ///< some line of it is to taste, which no amount here holds
  std::vector<std::string> used_by;
  /// When the first recipe that uses it is begun at the soonest; none where the event's time is not
  /// known.
  std::optional<LocalTime> first_used = std::nullopt;
  /// What the cuts of this production leave of it, in the unit of `purchased`: not more than that.
  std::optional<Amount> from_by_products = std::nullopt;
  std::optional<Amount> in_store = std::nullopt;  ///< what the book says is there already
  Keeping keeping = {};

  /// Nothing where there is no offer, or all of it is there.
  std::optional<Amount> to_buy() const;
};

namespace detail {

void add_used(std::vector<Amount>& sums, const Amount& used);

inline void keep_earlier(std::optional<LocalTime>& known, const std::optional<LocalTime>& other) {
  if (other && (!known || *other < *known)) known = other;
}

}  // namespace detail

/// Every ingredient of all dishes and sub-recipes, by name. Unlike a plate cost, it holds the whole
/// pieces of sub-recipes that are made for this production. `served` is when its food is served.
/// Throws Failure, at the line's place, where an amount does not lead to the pack's unit, and for a
/// step that takes more than a year.
std::vector<Need> needs_of(const Production& production, const RecipeBook& book,
                           const PriceList& prices,
                           const std::optional<ZonedTime>& served = std::nullopt);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/needs.hpp"
#endif
