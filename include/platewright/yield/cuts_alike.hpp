// SPDX-License-Identifier: MIT
#pragma once
// Which rows of cuts may stand for one another, and which of them buys the most.

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/folded_name.hpp"
#include "platewright/yield/cut.hpp"

namespace platewright {

/// How the row is cooked, each way by itself: `broiled or grilled` is two.
inline std::vector<std::string> methods_of(const Cut& cut) {
  constexpr std::string_view between = " or ";
  std::vector<std::string> methods;
  for (const Rung& rung : cut.ladder.rungs()) {
    std::string_view rest = rung.method;
    while (!rest.empty()) {
      const std::size_t end = rest.find(between);
      methods.emplace_back(rest.substr(0, end));
      rest = end == std::string_view::npos ? std::string_view{} : rest.substr(end + between.size());
    }
  }
  return methods;
}

/// Whether the two share a way of cooking; two rows that name none do.
inline bool cooked_alike(const Cut& left, const Cut& right) {
  const std::vector<std::string> methods = methods_of(left);
  const std::vector<std::string> others = methods_of(right);
  if (methods.empty() || others.empty()) return methods.empty() == others.empty();
  return std::any_of(methods.begin(), methods.end(), [&](const std::string& method) {
    return std::find(others.begin(), others.end(), method) != others.end();
  });
}

/// Whether the two are of the same goods as purchased and serve the same of them: meat that was
/// picked off without its skin is not what meat and skin are.
inline bool serve_alike(const Cut& left, const Cut& right) {
  return folded_name(goods_of(left)) == folded_name(goods_of(right)) &&
         left.ladder.first() == right.ladder.first() &&
         left.ladder.holds(Loss::skin) == right.ladder.holds(Loss::skin);
}

/// Whether `left` buys more for the same plates: a row that takes the bone out comes before one
/// that does not, then the lower yield.
inline bool is_more_careful(const Cut& left, const Cut& right) {
  const std::size_t held = left.ladder.still_held().size();
  const std::size_t others = right.ladder.still_held().size();
  return held != others ? held < others : left.ladder.yield() < right.ladder.yield();
}

}  // namespace platewright
