// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/detail/graded_grid.hpp.

#include <cmath>

#include "platewright/heat/detail/graded_grid.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY GradedGrid GradedGrid::along(const HeatPath& path, std::size_t cells) {
  // The outermost cell is a tenth of the innermost: the crust forms where the gradient is steep.
  const double shrink = std::pow(0.1, 1.0 / static_cast<double>(cells - 1));
  const double first =
      path.radius * (1 - shrink) / (1 - std::pow(shrink, static_cast<double>(cells)));
  GradedGrid out;
  double inner = 0;
  double width = first;
  for (std::size_t i = 0; i < cells; ++i) {
    const double outer = i + 1 == cells ? path.radius : inner + width;
    const double power = path.exponent + 1;
    out.middles.push_back((inner + outer) / 2);
    out.volumes.push_back((std::pow(outer, power) - std::pow(inner, power)) / power);
    out.areas.push_back(std::pow(outer, path.exponent));
    inner = outer;
    width *= shrink;
  }
  return out;
}

}  // namespace platewright::detail
