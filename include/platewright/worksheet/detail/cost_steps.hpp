// SPDX-License-Identifier: MIT
#pragma once
// The last steps of both sheets: from the cost of a usable weight to portions and a new price.

#include <optional>
#include <string>

#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/money.hpp"
#include "platewright/worksheet/portion_cost.hpp"
#include "platewright/worksheet/weighed_in.hpp"
#include "platewright/worksheet/working.hpp"

namespace platewright::detail {

/// What both sheets hand to their last steps.
struct CostFigures {
  PricePerMass cost_per_weight;
  PricePerMass purchase_price;
  /// The yield since the weight that was paid for.
  Rational yield;
  std::optional<Mass> portion;
  std::optional<PricePerMass> new_price;
};

inline constexpr const char* difference_words =
    "the difference of the prices was added; it is the factor that carries the cost over";
inline constexpr const char* times_yield_words =
    "the price as purchased was multiplied by the yield; a yield divides it";

/// Slips on the way from a pound to an ounce, or from a kilogram to 100 g.
void add_small_weight_slips(WorkingWriter& writer, const CostFigures& figures,
                            const std::string& per_weight, WeighedIn weights);

/// Slips with a portion's weight: its number taken for the larger unit, or for a decimal of it.
void add_portion_slips(WorkingWriter& writer, const CostFigures& figures,
                       const std::string& per_weight, WeighedIn weights);

void add_portion_steps(WorkingWriter& writer, const CostFigures& figures,
                       const std::string& per_weight, const Rational& cost_factor,
                       WeighedIn weights);

/// Cost for an ounce or 100 g, cost factor, and what they give for a portion and at a new price.
void add_cost_steps(WorkingWriter& writer, const CostFigures& figures, WeighedIn weights);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/detail/cost_steps.hpp"
#endif
