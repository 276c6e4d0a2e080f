// SPDX-License-Identifier: MIT
#pragma once
// The unit by which the trade compares prices.

#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/quantity/built_in_units.hpp"

namespace platewright {

namespace detail {

/// Empty where prices of a measure are compared by that measure itself.
std::string_view compared_by(UnitDimension dimension, MeasuringSystem system);

}  // namespace detail

/// Kilograms and litres for metric measures; pounds, US quarts and imperial pints for the others;
/// what is larger, a gallon or a tonne, stays, and so do dry pints, scoops, counts and a user's own
/// units. Common practice, no source.
Unit trade_unit(const Unit& unit);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/trade_unit.hpp"
#endif
