// SPDX-License-Identifier: MIT
#pragma once
// The shape of a roast, as a cook can measure it.

#include <string>

#include "platewright/number/nearest_double.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/heat.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

/// What heat has to cross: from the middle to the surface `radius` metres, through an area that
/// grows as distance^exponent (0 in a wide slab, 1 in a long cylinder, 2 in a sphere).
struct HeatPath {
  double radius = 0;
  double exponent = 0;
};

/// The same body with its ends closed to the heat, and with what comes in by the ends spread over
/// its sides. A body with ends is between the two: slower than the second, faster than the first.
struct HeatPaths {
  HeatPath without_ends;
  HeatPath with_ends;

  /// Half way between the two.
  HeatPath likely() const;
};

/// A sphere, a cylinder or a slab with a square face, by its weight and one measure across.
class RoastShape {
 public:
  enum class Kind { sphere, cylinder, slab };

  /// A bird, a ball. Throws Failure for a weight that is not above 0, as the others do.
  static RoastShape sphere(const Mass& weight) { return RoastShape(Kind::sphere, weight, {}); }

  /// A rolled or long roast: `girth` is the length of the string once around. Throws Failure where
  /// a ball of this weight has a smaller one.
  static RoastShape cylinder(const Mass& weight, const Length& girth);

  /// A flat piece. Throws Failure where a ball of this weight is thinner.
  static RoastShape slab(const Mass& weight, const Length& thickness);

  Kind kind() const { return kind_; }
  const Mass& weight() const { return weight_; }
  /// Girth or thickness; 0 of a sphere.
  const Length& across() const { return across_; }

  /// `density` in kg/m3. The exponent with ends is that of the body whose surface is as large for
  /// its volume: surface x radius / volume - 1, and at most the 2 of a sphere, as a piece that is
  /// about as long as thick has no sharp ends.
  HeatPaths paths(double density) const;

 private:
  RoastShape(Kind kind, Mass weight, Length across);

  std::string weight_text() const;

  Kind kind_;
  Mass weight_;
  Length across_;
};

/// The same shape at another weight: measures across go with the cube root of the weight, to the
/// last digit of a floating-point number. Throws Failure as the shapes themselves do.
RoastShape similar_shape(const RoastShape& shape, const Mass& weight);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/roast_shape.hpp"
#endif
