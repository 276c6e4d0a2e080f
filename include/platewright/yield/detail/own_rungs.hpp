// SPDX-License-Identifier: MIT
#pragma once
// A cook's own rungs in place of a table's: what they hold.

#include <algorithm>
#include <utility>
#include <vector>

#include "platewright/yield/loss_stage.hpp"

namespace platewright::detail {

/// Rungs each of which begins where the one before it ends, from the first of `own` on, which are
/// in order; they are taken out of `own`.
inline std::vector<Rung> take_joined(std::vector<Rung>& own) {
  auto end = own.begin() + 1;
  while (end != own.end() && end->from == (end - 1)->to) ++end;
  std::vector<Rung> out(own.begin(), end);
  own.erase(own.begin(), end);
  return out;
}

/// The rung of the chain in which `stage` is reached; the last where none does.
inline Rung& rung_reaching(Stage stage, std::vector<Rung>& chain) {
  const auto found =
      std::find_if(chain.begin(), chain.end(), [&](const Rung& rung) { return rung.to >= stage; });
  return found == chain.end() ? chain.back() : *found;
}

inline bool holds(const std::vector<Rung>& rungs, Loss loss) {
  return std::any_of(rungs.begin(), rungs.end(), [&](const Rung& rung) {
    return std::find(rung.holds.begin(), rung.holds.end(), loss) != rung.holds.end();
  });
}

/// The chain with the losses and the methods of the rungs that it stands for, each where it
/// happens.
inline void take_over(const std::vector<Rung>& replaced, std::vector<Rung>& chain) {
  for (const Rung& rung : replaced) {
    for (const Loss loss : rung.holds) {
      rung_reaching(stage_of(loss, rung), chain).holds.push_back(loss);
    }
    if (rung.method.empty()) continue;
    std::string& method = rung_reaching(rung.to, chain).method;
    method += (method.empty() ? "" : ", ") + rung.method;
  }
}

/// What the parts of the chain hold that go on beyond `last`, the end of the ladder: who carves
/// takes out what was `still_held`, the bone; a rung to the oven holds the cooking.
inline void go_on(Stage last, const std::vector<Loss>& still_held, std::vector<Rung>& chain) {
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
