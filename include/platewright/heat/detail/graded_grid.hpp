// SPDX-License-Identifier: MIT
#pragma once
// Cells from the middle of a body to its surface, thinner towards the surface.

#include <cstddef>
#include <vector>

#include "platewright/heat/roast_shape.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

/// Finite volumes for one unit of solid angle (of length, of face): a cell's volume is the integral
/// of distance^exponent over it, so that areas and volumes fit together exactly and what leaves one
/// cell enters the next.
struct GradedGrid {
  std::vector<double> middles;  ///< m from the middle of the body
  std::vector<double> volumes;
  std::vector<double> areas;  ///< of the outer face of each cell; the last is the surface

  std::size_t size() const { return middles.size(); }

  static GradedGrid along(const HeatPath& path, std::size_t cells);
};

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/detail/graded_grid.hpp"
#endif
