// SPDX-License-Identifier: MIT
#pragma once
// The budget turned round: given the price of a guest and the margin, which cuts and portions fit.

#include <optional>
#include <string>
#include <vector>

#include "platewright/event/changes.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// What is given: a full price, the margin on what the guests pay, and the dish that may change.
struct Budget {
  Money price;
  Rational margin;
  std::string dish;
  std::vector<std::string> cuts;  ///< ingredients that could be its main line
  std::vector<Mass> portions;     ///< weights as served
};

/// One cut at one portion.
struct BudgetChoice {
  std::string cut;
  Mass portion;
  Money cost;  ///< of the cut for all portions of the dish: what is used, no whole pieces
  bool fits = false;
  /// The portion that uses up all that is left for the cut; none where the cut is free or nothing
  /// is left.
  std::optional<Mass> largest;
};

/// Where the money goes, and what is left for the cut.
struct BudgetAnswer {
  Money income;       ///< of all guests
  Money food;         ///< what all food may cost
  Money other;        ///< food that stays: the other dishes, and the rest of this one
  Money for_cut;      ///< food - other; below 0 where the rest alone is too dear
  Rational portions;  ///< of the dish
  std::vector<BudgetChoice> choices;
};

namespace detail {

/// What a served unit of weight of an ingredient costs: as-purchased price, less what the
/// by-products are worth, / yield of the ladder.
PricePerMass served_price(const Occasion& occasion, const std::string& name);

}  // namespace detail

/// What is left for a cut is what the food may cost - the food that stays. Every cut is tried with
/// every portion, in the order given. Throws Failure for a margin below 0 or of 100 % and more, for
/// a dish that is not on the menu or uses no cut, and as `quote_of` does.
BudgetAnswer turn_round(const Occasion& occasion, const Budget& budget);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/budget.hpp"
#endif
