// SPDX-License-Identifier: MIT
#pragma once
// How few guests may come before the event costs more than it brings in.

#include <optional>

#include "platewright/event/detail/margin_search.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// From how many guests on an event covers its cost.
struct BreakEven {
  Integer guests;
  /// False where the search ended early: the event covers its cost from `guests` on, and may from
  /// fewer.
  bool is_fewest = true;

  friend bool operator==(const BreakEven&, const BreakEven&) = default;
};

/// The fewest guests of the same mix from which on, up to the number expected, what they pay covers
/// what they cost. The full price stays the one that is quoted for the number expected; everything
/// else is planned anew for each number, since whole pieces and workers do not follow the guests in
/// proportion. Where the number expected does not cover the cost, the first number above it that
/// does, up to four times as many; nothing where none is found. What is guaranteed is left out: the
/// number found is the one that is worth being guaranteed.
///
/// Numbers of guests are looked through by halves, a whole range at once where its ends show that
/// all of it is on one side; the answer is that of walking guest by guest. Where a very large event
/// with next to no margin takes more plans than `most_trials`, the search ends early, and says so.
/// Throws Failure as `quote_of` does.
std::optional<BreakEven> break_even(const Occasion& occasion);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/break_even.hpp"
#endif
