// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/measure_set.hpp.

#include <algorithm>
#include <utility>

#include "platewright/kitchen/measure_set.hpp"

namespace platewright {

PLATEWRIGHT_BODY KitchenSet::KitchenSet(std::vector<KitchenTool> tools) : tools_(std::move(tools)) {
  if (tools_.empty()) throw Failure(problems::kitchen_empty());
  for (const KitchenTool& tool : tools_) expect_usable(tool);
  // Copies, because the sort moves the tools it compares.
  const std::vector<KitchenTool> all = tools_;
  std::stable_sort(tools_.begin(), tools_.end(), [&](const auto& left, const auto& right) {
    if (left.unit == right.unit) return left.from > right.from;
    const auto left_most = most_of(all, left.unit);
    const auto right_most = most_of(all, right.unit);
    if (left_most && right_most && *left_most != *right_most) return *left_most > *right_most;
    if (left_most.has_value() != right_most.has_value()) return !left_most;
    if (left.unit.size() != right.unit.size()) return left.unit.size() > right.unit.size();
    return left.unit.name() < right.unit.name();
  });
  end_below_the_largest();
}

PLATEWRIGHT_BODY std::optional<Rational> KitchenSet::most_of(const std::vector<KitchenTool>& tools,
                                                             const Unit& unit) {
  Rational most;
  for (const KitchenTool& tool : tools) {
    if (!(tool.unit == unit)) continue;
    if (!tool.to) return std::nullopt;
    most = std::max(most, Rational(*tool.to * unit.size()));
  }
  return most;
}

PLATEWRIGHT_BODY void KitchenSet::end_below_the_largest() {
  const Unit largest = tools_.front().unit;
  std::optional<Rational> end;
  for (const KitchenTool& tool : tools_) {
    if (!(tool.unit == largest)) continue;
    const Rational start = up_to(tool.from, tool.step) * largest.size();
    if (!end || start < *end) end = start;
  }
  std::vector<KitchenTool> kept;
  for (KitchenTool& tool : tools_) {
    if (!(tool.unit == largest)) {
      const auto last = tool.before(*end / tool.unit.size());
      if (!last) continue;
      tool.to = last;
    }
    kept.push_back(std::move(tool));
  }
  tools_ = std::move(kept);
}

}  // namespace platewright
