// SPDX-License-Identifier: MIT
#pragma once
// One kind of measure that a kitchen owns, and the numbers that can be measured with it.

#include <optional>
#include <string>
#include <vector>

#include "platewright/kitchen/measured_parts.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/kitchens.hpp"

namespace platewright {

/// Spoons, cups, or a stretch of a jug's scale, in one unit of capacity. What can be measured in
/// one term are the whole steps, and each with one of the marks added, `from` to `to` (no end where
/// there is none), all counted in the unit: cups with quarters up to 3 3/4 are `{cup, 1/4, 15/4, 1,
/// {1/4, 1/2, 3/4}}`, a jug marked every 25 mL from 250 to 475 is `{mL, 250, 475, 25, {}}`. `to`
/// keeps a term from being absurd: three teaspoons are a tablespoon.
struct KitchenTool {
  Unit unit;
  Rational from = 1;
  std::optional<Rational> to;
  Rational step = 1;
  std::vector<Rational> marks;  ///< each above 0 and below the step
  PartNumber written = PartNumber::mixed;

  friend bool operator==(const KitchenTool&, const KitchenTool&) = default;

  /// The largest number not above `number` that can be measured in one term, if any.
  std::optional<Rational> at_or_below(const Rational& number) const;

  /// The smallest number not below `number` that can be measured in one term, if any.
  std::optional<Rational> at_or_above(const Rational& number) const;

  /// The largest number below `number` that can be measured in one term, if any.
  std::optional<Rational> before(const Rational& number) const;
};

/// Throws Failure for a tool that can measure nothing: a unit that is not one of capacity, a step
/// or a smallest number that is not above 0, a mark that is not between 0 and the step, an end
/// before the first number; and for one with more than ten thousand numbers, which is not a
/// kitchen's. (Spoons alone up to the first mark of a jug may well have more than a thousand.)
void expect_usable(const KitchenTool& tool);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/tool.hpp"
#endif
