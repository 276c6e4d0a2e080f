// SPDX-License-Identifier: MIT
#pragma once
// What a portion of the usable or saleable weight costs.

#include "platewright/quantity/quantity.hpp"

namespace platewright {

/// The cost of one portion, and the factor that carries it to another purchase price.
struct PortionCost {
  Mass portion;
  Money cost;
  /// The weight as purchased that costs as much as one portion. In pounds it is the trade's portion
  /// cost factor for a price per pound: portion cost / purchase price per pound.
  Mass factor;

  /// The portion's cost at another purchase price, by-products and labour moving with it.
  Money at(const PricePerMass& purchase_price) const { return purchase_price * factor; }
};

/// portion x cost per weight; factor = portion x cost factor.
inline PortionCost portion_cost(const Mass& portion, const PricePerMass& cost_per_weight,
                                const Rational& cost_factor) {
  return {portion, cost_per_weight * portion, portion * cost_factor};
}

}  // namespace platewright
