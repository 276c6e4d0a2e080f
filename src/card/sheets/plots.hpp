// SPDX-License-Identifier: MIT
#pragma once
// Curves drawn from the figures of a table.

#include <cstddef>
#include <string>
#include <vector>

#include "platewright/card/blocks.hpp"

namespace platewright::card {

/// A column of figures, drawn under a name of its own.
struct CurveColumn {
  std::size_t column;
  std::string label;
};

/// The table with its columns `ups` drawn over its column `across`, every row a point. Rows whose
/// figures are not all there are left out. The axes run between round numbers and are named
/// `across_label`, `up_label`.
Picture drawn(Table table, std::size_t across, const std::string& across_label,
              const std::vector<CurveColumn>& ups, const std::string& up_label);

/// The axis over these values, at least one, with at most nine ticks at round numbers.
Axis axis_over(std::string label, const std::vector<Rational>& values);

}  // namespace platewright::card
