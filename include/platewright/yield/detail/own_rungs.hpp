// SPDX-License-Identifier: MIT
#pragma once
// A cook's own rungs in place of a table's: what they hold.

#include <utility>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/yield/loss_stage.hpp"

namespace platewright::detail {

/// Rungs each of which begins where the one before it ends, from the first of `own` on, which are
/// in order; they are taken out of `own`.
std::vector<Rung> take_joined(std::vector<Rung>& own);

/// The rung of the chain in which `stage` is reached; the last where none does.
Rung& rung_reaching(Stage stage, std::vector<Rung>& chain);

bool holds(const std::vector<Rung>& rungs, Loss loss);

/// The chain with the losses and the methods of the rungs that it stands for, each where it
/// happens.
void take_over(const std::vector<Rung>& replaced, std::vector<Rung>& chain);

/// What the parts of the chain hold that go on beyond `last`, the end of the ladder: who carves
/// takes out what was `still_held`, the bone; a rung to the oven holds the cooking.
void go_on(Stage last, const std::vector<Loss>& still_held, std::vector<Rung>& chain);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/detail/own_rungs.hpp"
#endif
