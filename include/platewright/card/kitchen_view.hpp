// SPDX-License-Identifier: MIT
#pragma once
// In whose measures a sheet is written, and an amount as a cell in them.

#include <string>
#include <utility>

#include "platewright/card/cell.hpp"
#include "platewright/kitchen/kitchen.hpp"
#include "platewright/quantity/ingredient_weights.hpp"

namespace platewright {

/// The kitchen that a sheet is written for. Amounts are rounded here, at the edge: to measures that
/// the kitchen owns, within its tolerance or by its rounding rule, and to what its scale shows.
class KitchenView {
 public:
  explicit KitchenView(Kitchen kitchen) : kitchen_(std::move(kitchen)) {}

  MeasuringSystem system() const { return kitchen_.system; }

  /// Whose cups, spoons and pints these are, and how they are rounded: `US customary cups, spoons
  /// and pints; the fewest measures within 2 %`.
  std::string described() const;

  /// The amount as the cook measures it: a capacity in kitchen measures with the error where it is
  /// not 0 to a tenth of a per cent, a weight as the scale shows it, a count in whole and half
  /// pieces, a length up to the next step of the tape, anything else as a decimal. Of a weight or a
  /// count the error is printed where it is more than the tolerance.
  Cell measure(const Amount& amount) const;
  /// A range as `2 tbsp to 3 tbsp`; `to taste` where there is no amount.
  Cell measure(const LineAmount& amount) const;
  /// A capacity in kitchen measures.
  std::string capacity(const Volume& volume) const;
  /// How far a vessel is filled, which nobody measures out: `6.8 L`, `7.1 qt`.
  std::string level(const Volume& volume) const;
  /// A weight as the scale shows it, rounded in the direction named: up for what is bought or taken
  /// from the store, down for what is served or left.
  Cell weight(const Mass& mass, Rounding rounding) const;
  /// What `amount` of an ingredient weighs; an empty cell where its weight is not known, or
  /// where a scale does not show it within a tenth.
  Cell weight_of(const LineAmount& amount, const IngredientWeights& weights) const;

 private:
  std::string with_error(const std::string& text, const Rational& error) const;
  std::string pieces_text(const Amount& amount) const;

  Kitchen kitchen_;
};

}  // namespace platewright
