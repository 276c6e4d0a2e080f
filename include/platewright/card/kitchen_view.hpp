#pragma once
// In whose measures a sheet is written, and an amount as a cell in them.

#include "platewright/card/cell.hpp"
#include "platewright/quantity/ingredient_weights.hpp"
#include "platewright/quantity/kitchen_of.hpp"
#include "platewright/quantity/kitchen_scale.hpp"

namespace platewright {

/// The measures and scales that a sheet is written for. Amounts are rounded here, at the edge: to
/// measures that the kitchen owns, within a tolerance, and to what its scale shows.
class KitchenView {
 public:
  /// Throws Failure where the unit table lacks a unit of the system's kitchen.
  KitchenView(MeasuringSystem system, const UnitTable& units)
      : system_(system), set_(kitchen_of(system, units)), scale_(scale_of(system, units)) {}

  MeasuringSystem system() const { return system_; }

  /// The amount as the cook measures it: a capacity in kitchen measures, a weight as the scale shows
  /// it, a count in whole and half pieces, anything else as a decimal. A difference of more than
  /// 2 % that rounding makes is printed with it.
  Cell measure(const Amount& amount) const;
  /// A capacity in kitchen measures, with the error wherever it is not 0.
  std::string measure_with_error(const Amount& amount) const;
  /// A range as `2 tbsp to 3 tbsp`; `to taste` where there is no amount.
  Cell measure(const LineAmount& amount) const;
  /// A weight as the scale shows it.
  Cell weight(const Mass& mass) const;
  /// What `amount` of an ingredient weighs; an empty cell where its weight is not known.
  Cell weight_of(const LineAmount& amount, const IngredientWeights& weights) const;

 private:
  MeasuringSystem system_;
  KitchenSet set_;
  KitchenRule scale_;
};

}  // namespace platewright
