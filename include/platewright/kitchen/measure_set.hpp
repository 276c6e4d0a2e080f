// SPDX-License-Identifier: MIT
#pragma once
// The measures that a kitchen owns.

#include <optional>
#include <vector>

#include "platewright/kitchen/tool.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// All measures of capacity of one kitchen, the largest unit first. One unit may have several tools
/// (a jug's scale that widens); a sum of terms uses each unit once.
class KitchenSet {
 public:
  /// A tool of a smaller unit ends below one whole step of the largest unit, whatever it says
  /// itself: no one measures a gallon in cups. Throws Failure for a tool that is not usable, and
  /// for no tool at all.
  explicit KitchenSet(std::vector<KitchenTool> tools);

  /// The tools of one unit stand together, its larger numbers first; the units by the most that can
  /// be measured in them.
  const std::vector<KitchenTool>& tools() const { return tools_; }

  friend bool operator==(const KitchenSet&, const KitchenSet&) = default;

 private:
  /// The most that one term of the unit measures, in mL; nothing where there is no end.
  static std::optional<Rational> most_of(const std::vector<KitchenTool>& tools, const Unit& unit);

  void end_below_the_largest();

  std::vector<KitchenTool> tools_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/measure_set.hpp"
#endif
