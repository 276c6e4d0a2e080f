// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/tool.hpp.

#include "platewright/kitchen/tool.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Rational> KitchenTool::at_or_below(const Rational& number) const {
  const Rational most = to && *to < number ? *to : number;
  const Rational whole = down_to(most, step);
  Rational best = whole;
  for (const Rational& mark : marks) {
    if (whole + mark <= most && whole + mark > best) best = whole + mark;
  }
  return best < from ? std::nullopt : std::optional(best);
}

PLATEWRIGHT_BODY std::optional<Rational> KitchenTool::at_or_above(const Rational& number) const {
  const Rational least = number < from ? from : number;
  const Rational whole = down_to(least, step);
  Rational best = up_to(least, step);
  for (const Rational& mark : marks) {
    if (whole + mark >= least && whole + mark < best) best = whole + mark;
  }
  return to && best > *to ? std::nullopt : std::optional(best);
}

PLATEWRIGHT_BODY std::optional<Rational> KitchenTool::before(const Rational& number) const {
  if (to && number > *to) return at_or_below(*to);
  const Rational whole = up_to(number, step) - step;
  Rational best = whole;
  for (const Rational& mark : marks) {
    if (whole + mark < number && whole + mark > best) best = whole + mark;
  }
  return best < from ? std::nullopt : std::optional(best);
}

PLATEWRIGHT_BODY void expect_usable(const KitchenTool& tool) {
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
