// SPDX-License-Identifier: MIT
#pragma once
// Which prices and yields move the price of a guest most.

#include <cstddef>
#include <string>
#include <vector>

#include "platewright/event/trial_bound.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

enum class Moves { price, yield };

/// One price that rises, or one yield that falls, and what that does.
struct PriceMover {
  Moves what = Moves::price;
  std::string ingredient;
  Money moved;  ///< exact price of a guest after - before
};

/// The `most` greatest movers: each price of an ingredient raised by `change`, and the last yield
/// of each one that loses anything lowered by `change`, one at a time, everything planned anew. By
/// the size of the move, a price before a yield where they are equal. The move is that of the exact
/// price, before its rounding to a step. `change` is a share above 0 and below 1. Throws Failure
/// for another one, for more than `most_trials`, and as `quote_of` does.
std::vector<PriceMover> price_movers(const Occasion& occasion, const Rational& change,
                                     std::size_t most = 5);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/price_movers.hpp"
#endif
