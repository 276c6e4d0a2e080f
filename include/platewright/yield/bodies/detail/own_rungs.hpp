// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/detail/own_rungs.hpp.

#include <algorithm>

#include "platewright/yield/detail/own_rungs.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY std::vector<Rung> take_joined(std::vector<Rung>& own) {
  auto end = own.begin() + 1;
  while (end != own.end() && end->from == (end - 1)->to) ++end;
  std::vector<Rung> out(own.begin(), end);
  own.erase(own.begin(), end);
  return out;
}

PLATEWRIGHT_BODY Rung& rung_reaching(Stage stage, std::vector<Rung>& chain) {
  const auto found =
      std::find_if(chain.begin(), chain.end(), [&](const Rung& rung) { return rung.to >= stage; });
  return found == chain.end() ? chain.back() : *found;
}

PLATEWRIGHT_BODY bool holds(const std::vector<Rung>& rungs, Loss loss) {
  return std::any_of(rungs.begin(), rungs.end(), [&](const Rung& rung) {
    return std::find(rung.holds.begin(), rung.holds.end(), loss) != rung.holds.end();
  });
}

PLATEWRIGHT_BODY void take_over(const std::vector<Rung>& replaced, std::vector<Rung>& chain) {
  for (const Rung& rung : replaced) {
    for (const Loss loss : rung.holds) {
      rung_reaching(stage_of(loss, rung), chain).holds.push_back(loss);
    }
    if (rung.method.empty()) continue;
    std::string& method = rung_reaching(rung.to, chain).method;
    method += (method.empty() ? "" : ", ") + rung.method;
  }
}

PLATEWRIGHT_BODY void go_on(Stage last, const std::vector<Loss>& still_held,
                            std::vector<Rung>& chain) {
  const auto add = [&](Rung& rung, Loss loss) {
    if (!holds(chain, loss)) rung.holds.push_back(loss);
  };
  for (Rung& rung : chain) {
    if (rung.to <= last) continue;
    if (rung.from < Stage::cooked && rung.to >= Stage::cooked) add(rung, Loss::cooking);
    if (rung.to < Stage::carved) continue;
    for (const Loss loss : still_held) add(rung, loss);
    add(rung, Loss::carving);
  }
}

}  // namespace platewright::detail
