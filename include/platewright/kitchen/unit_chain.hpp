// SPDX-License-Identifier: MIT
#pragma once
// A value written exactly in a chain of units: pounds, then ounces.

#include <vector>

#include "platewright/kitchen/measured_parts.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/unit_table.hpp"

namespace platewright {

/// One unit of a chain: what is left is taken in whole steps of it, or all of it where the step is
/// 0. It is passed over while less than `from` (in g, mL or cm) is left.
struct KitchenLink {
  Unit unit;
  Rational from;
  Rational step;
  PartNumber written = PartNumber::mixed;

  friend bool operator==(const KitchenLink&, const KitchenLink&) = default;
};

/// The largest unit first; the last one takes all that is left.
using KitchenChain = std::vector<KitchenLink>;

/// The terms of `value` (g, mL or cm), whose sum is `value` exactly; a value of 0 is 0 of the last
/// unit.
std::vector<KitchenPart> in_chain(const Rational& value, const KitchenChain& chain);

/// `4 lb 5 1/2 oz`.
KitchenChain pounds_and_ounces(const UnitTable& table);

/// `4.35 lb`.
inline KitchenChain decimal_pounds(const UnitTable& table) {
  return {{table.find("lb", MeasuringSystem::us), 0, 0, PartNumber::decimal}};
}

/// `850 g`, from one kilogram on `1.25 kg`.
KitchenChain grams_and_kilograms(const UnitTable& table);

/// `1 gal + 2 qt + 3/4 cup + 2 tbsp + 1/4 tsp`: the order of the Armed Forces Recipe Service, TM
/// 10-412, card A-1, 2003. Cups are taken in quarters, so that there are never more than three
/// tablespoons: common practice, no source.
KitchenChain gallons_to_teaspoons(const UnitTable& table);

/// `1 gal + 3 pt + 7 1/2 fl oz`, the imperial ones; pints are taken whole. Common practice, no
/// source.
KitchenChain imperial_gallons_to_fluid_ounces(const UnitTable& table);

/// `850 mL`, from one litre on `1.25 L`.
KitchenChain litres_and_millilitres(const UnitTable& table);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/unit_chain.hpp"
#endif
