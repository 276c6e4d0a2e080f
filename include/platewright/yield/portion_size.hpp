// SPDX-License-Identifier: MIT
#pragma once
// How a portion is served: by weight, by the slice, or by the rib.

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/worksheets.hpp"
#include "platewright/quantity/positive.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "platewright/yield/ladder.hpp"

namespace platewright {

/// So many slices, each of one weight; the thickness is for whoever sets the slicer.
struct SlicePortion {
  Rational slices = 1;
  Mass slice;
  std::optional<Length> thickness;
};

/// So many ribs of a piece that has `of`.
struct RibPortion {
  Rational ribs = 1;
  Rational of = 1;
};

using PortionSize = std::variant<Mass, SlicePortion, RibPortion>;

/// What a portion weighs at the plate. A portion by the rib is that share of what a piece of the
/// weight `piece` (as purchased) comes to at the end of the ladder, bones left on where the ladder
/// leaves them on. Throws Failure for 0 or less anywhere, for more ribs than the piece has, and for
/// ribs without the weight of a piece.
Mass portion_at_plate(const PortionSize& size, const Ladder& ladder,
                      const std::optional<Mass>& piece);

/// The weight of a slice of one thickness, from a slice that was weighed: weight and thickness of
/// slices from one piece grow alike. Throws Failure for a thickness of 0 or less.
Mass slice_at(const Length& thickness, const SlicePortion& weighed);

/// Reads `6 oz`, `2 slices of 3 oz`, `2 slices of 3/4 in, 3 oz each` or `1 rib of 7`. Throws
/// Failure for anything else.
PortionSize read_portion_size(std::string_view text, const UnitTable& units,
                              MeasuringSystem system);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/portion_size.hpp"
#endif
