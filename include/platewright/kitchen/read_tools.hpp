// SPDX-License-Identifier: MIT
#pragma once
// The measures and scales of a kitchen as a cook names them: `1/4 tsp`, `100-1000 mL by 50 mL`, `5
// g from 1 kg`.

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/kitchen/measure_set.hpp"
#include "platewright/kitchen/rounding.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The kitchen that owns these: each a spoon or cup (`1/4 tsp`, `1 cup`) or a jug (`100-1000 mL by
/// 50 mL`). Bare cups are those of `system`. Throws Failure for what is neither, and for what can't
/// be measured with.
KitchenSet read_measures(const std::vector<std::string>& texts, MeasuringSystem system,
                         const UnitTable& table);

/// What a scale shows: `1 g`, or `1 g` with `5 g from 1 kg` after it. Written in metric units where
/// the first step is. Throws Failure for a step that is not one of weight or not above 0.
KitchenRule read_scale(const std::vector<std::string>& texts, MeasuringSystem system,
                       const UnitTable& table);

/// Reads a tolerance: `2 %`. Throws Failure for more than half.
Rational read_tolerance(std::string_view text);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/read_tools.hpp"
#endif
