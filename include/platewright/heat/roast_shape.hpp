// SPDX-License-Identifier: MIT
#pragma once
// The shape of a roast, as a cook can measure it.

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <utility>

#include "platewright/number/nearest_double.hpp"
#include "platewright/number/write.hpp"
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
  HeatPath likely() const {
    return {without_ends.radius, (without_ends.exponent + with_ends.exponent) / 2};
  }
};

/// A sphere, a cylinder or a slab with a square face, by its weight and one measure across.
class RoastShape {
 public:
  enum class Kind { sphere, cylinder, slab };

  /// A bird, a ball. Throws Failure for a weight that is not above 0, as the others do.
  static RoastShape sphere(const Mass& weight) { return RoastShape(Kind::sphere, weight, {}); }

  /// A rolled or long roast: `girth` is the length of the string once around. Throws Failure where
  /// a ball of this weight has a smaller one.
  static RoastShape cylinder(const Mass& weight, const Length& girth) {
    return RoastShape(Kind::cylinder, weight, girth);
  }

  /// A flat piece. Throws Failure where a ball of this weight is thinner.
  static RoastShape slab(const Mass& weight, const Length& thickness) {
    return RoastShape(Kind::slab, weight, thickness);
  }

  Kind kind() const { return kind_; }
  const Mass& weight() const { return weight_; }
  /// Girth or thickness; 0 of a sphere.
  const Length& across() const { return across_; }

  /// `density` in kg/m3. The exponent with ends is that of the body whose surface is as large for
  /// its volume: surface x radius / volume - 1, and at most the 2 of a sphere, as a piece that is
  /// about as long as thick has no sharp ends.
  HeatPaths paths(double density) const {
    const double volume = nearest_double(weight_.in(units::kilogram)) / density;
    const double across = nearest_double(across_.in(units::centimetre)) / 100;
    switch (kind_) {
      case Kind::cylinder: {
        const double radius = across / (2 * std::numbers::pi);
        const double length = volume / (std::numbers::pi * radius * radius);
        return {{radius, 1}, {radius, std::min(2.0, 1 + 2 * radius / length)}};
      }
      case Kind::slab: {
        const double width = std::sqrt(volume / across);
        return {{across / 2, 0}, {across / 2, std::min(2.0, 2 * across / width)}};
      }
      case Kind::sphere:
        break;
    }
    const double radius = std::cbrt(3 * volume / (4 * std::numbers::pi));
    return {{radius, 2}, {radius, 2}};
  }

 private:
  RoastShape(Kind kind, Mass weight, Length across)
      : kind_(kind), weight_(std::move(weight)), across_(std::move(across)) {
    if (weight_ <= Mass{}) throw Failure(problems::number_not_positive("a weight", weight_text()));
    if (kind_ == Kind::sphere) return;
    const std::string measured = std::string(kind_ == Kind::cylinder ? "a girth" : "a thickness") +
                                 " of " + as_short_decimal(across_.in(units::centimetre), 1) +
                                 " cm";
    if (across_ <= Length{})
      throw Failure(problems::roast_shape_impossible(measured, weight_text()));
    // Meat is a little heavier than water, so that this lets every true measure pass.
    const double ball = RoastShape(Kind::sphere, weight_, {}).paths(1000).likely().radius;
    if (paths(1000).likely().radius > ball) {
      throw Failure(problems::roast_shape_impossible(measured, weight_text()));
    }
  }

  std::string weight_text() const {
    return as_short_decimal(weight_.in(units::kilogram), 3) + " kg";
  }

  Kind kind_;
  Mass weight_;
  Length across_;
};

/// The same shape at another weight: measures across go with the cube root of the weight, to the
/// last digit of a floating-point number. Throws Failure as the shapes themselves do.
inline RoastShape similar_shape(const RoastShape& shape, const Mass& weight) {
  const double ratio = std::cbrt(nearest_double(weight / shape.weight()));
  switch (shape.kind()) {
    case RoastShape::Kind::cylinder:
      return RoastShape::cylinder(weight, shape.across() * exact_value(ratio));
    case RoastShape::Kind::slab:
      return RoastShape::slab(weight, shape.across() * exact_value(ratio));
    case RoastShape::Kind::sphere:
      break;
  }
  return RoastShape::sphere(weight);
}

}  // namespace platewright
