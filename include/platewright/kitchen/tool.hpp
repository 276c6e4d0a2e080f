// SPDX-License-Identifier: MIT
#pragma once
// One kind of measure that a kitchen owns, and the numbers that can be measured with it.

#include <optional>
#include <string>
#include <vector>

#include "platewright/kitchen/measured_parts.hpp"
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
  std::optional<Rational> at_or_below(const Rational& number) const {
    const Rational most = to && *to < number ? *to : number;
    const Rational whole = down_to(most, step);
    Rational best = whole;
    for (const Rational& mark : marks) {
      if (whole + mark <= most && whole + mark > best) best = whole + mark;
    }
    return best < from ? std::nullopt : std::optional(best);
  }

  /// The smallest number not below `number` that can be measured in one term, if any.
  std::optional<Rational> at_or_above(const Rational& number) const {
    const Rational least = number < from ? from : number;
    const Rational whole = down_to(least, step);
    Rational best = up_to(least, step);
    for (const Rational& mark : marks) {
      if (whole + mark >= least && whole + mark < best) best = whole + mark;
    }
    return to && best > *to ? std::nullopt : std::optional(best);
  }

  /// The largest number below `number` that can be measured in one term, if any.
  std::optional<Rational> before(const Rational& number) const {
    if (to && number > *to) return at_or_below(*to);
    const Rational whole = up_to(number, step) - step;
    Rational best = whole;
    for (const Rational& mark : marks) {
      if (whole + mark < number && whole + mark > best) best = whole + mark;
    }
    return best < from ? std::nullopt : std::optional(best);
  }
};

/// Throws Failure for a tool that can measure nothing: a unit that is not one of capacity, a step
/// or a smallest number that is not above 0, a mark that is not between 0 and the step, an end
/// before the first number; and for one with more than ten thousand numbers, which is not a
/// kitchen's. (Spoons alone up to the first mark of a jug may well have more than a thousand.)
inline void expect_usable(const KitchenTool& tool) {
  expect_dimension(Amount{1, tool.unit}, UnitDimension::volume);
  const auto expect = [&](bool right, const char* why) {
    if (!right) throw Failure(problems::kitchen_measure_unusable(tool.unit.name(), why));
  };
  expect(tool.step > 0, "its step is not above 0");
  expect(tool.from > 0, "its smallest number is not above 0");
  for (const Rational& mark : tool.marks) {
    expect(mark > 0 && mark < tool.step, "a mark is not between 0 and the step");
  }
  expect(tool.at_or_above(tool.from).has_value(), "it ends before its first number");
  const Rational span = tool.to ? Rational(*tool.to - tool.from) : tool.from;
  expect(span / tool.step * static_cast<long>(tool.marks.size() + 1) <= 10000,
         "it has more than 10000 marks");
}

}  // namespace platewright
