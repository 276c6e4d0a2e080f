// SPDX-License-Identifier: MIT
#pragma once
// What if: other prices, other guests, one thing in place of another.

#include <optional>
#include <string>
#include <string_view>

#include "platewright/costing/bought_line.hpp"
#include "platewright/event/occasion.hpp"
#include "platewright/number/apportion.hpp"
#include "platewright/number/read.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/what_if.hpp"
#include "platewright/quantity/read_amount.hpp"

namespace platewright {

/// Every offer of an ingredient at its price times a factor, or at a price of its own.
struct PriceChange {
  std::string ingredient;
  Rational factor = 1;           ///< 1.12 is 12 % dearer
  std::optional<Money> price;    ///< instead of the factor
  std::optional<Unit> per = {};  ///< what the price is for one of; a pack where there is none
};

/// One ingredient, or one recipe, in place of another wherever it stands: in the same amount, but a
/// cut written as purchased in place of another with the same served weight.
struct Swap {
  std::string from;
  std::string to;
};

/// Reads `lamb leg=+12 %`, `lamb leg=-5 %`, `lamb leg=9.40 per lb` or `flour=4.10` (for a pack).
/// Throws Failure for another form and for a price that falls by more than all of it.
PriceChange read_price_change(std::string_view text, const UnitTable& units,
                              MeasuringSystem system);

/// Reads `lamb leg=mutton leg`. Throws Failure for another form.
Swap read_swap(std::string_view text);

/// Throws Failure for an ingredient that the book does not have, or without a price, for a price of
/// a piece whose weight varies, and where the unit named does not lead to the pack's.
void change_price(Occasion& occasion, const PriceChange& change);

/// `heads` guests of the same mix, each kind whole (largest remainder). Throws Failure for a number
/// that is not whole or not above 0, and for an event without guests.
void change_guests(Event& event, const Rational& heads);

/// The recipes as they would be written with the other ingredient or recipe. Throws Failure for
/// names that the book does not have, and where `from` is used nowhere.
void swap_in(Occasion& occasion, const Swap& swap);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/changes.hpp"
#endif
