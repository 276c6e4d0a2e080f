// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/cuts_alike.hpp.

#include <algorithm>
#include <string_view>

#include "platewright/yield/cuts_alike.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::vector<std::string> methods_of(const Cut& cut) {
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

PLATEWRIGHT_BODY bool cooked_alike(const Cut& left, const Cut& right) {
  const std::vector<std::string> methods = methods_of(left);
  const std::vector<std::string> others = methods_of(right);
  if (methods.empty() || others.empty()) return methods.empty() == others.empty();
  return std::any_of(methods.begin(), methods.end(), [&](const std::string& method) {
    return std::find(others.begin(), others.end(), method) != others.end();
  });
}

PLATEWRIGHT_BODY bool serve_alike(const Cut& left, const Cut& right) {
  return folded_name(goods_of(left)) == folded_name(goods_of(right)) &&
         left.ladder.first() == right.ladder.first() &&
         left.ladder.holds(Loss::skin) == right.ladder.holds(Loss::skin);
}

PLATEWRIGHT_BODY bool is_more_careful(const Cut& left, const Cut& right) {
  const std::size_t held = left.ladder.still_held().size();
  const std::size_t others = right.ladder.still_held().size();
  return held != others ? held < others : left.ladder.yield() < right.ladder.yield();
}

}  // namespace platewright
