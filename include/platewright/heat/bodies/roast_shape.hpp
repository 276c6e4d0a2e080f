// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/roast_shape.hpp.

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "platewright/heat/roast_shape.hpp"

namespace platewright {

PLATEWRIGHT_BODY HeatPath HeatPaths::likely() const {
  return {without_ends.radius, (without_ends.exponent + with_ends.exponent) / 2};
}

PLATEWRIGHT_BODY RoastShape RoastShape::cylinder(const Mass& weight, const Length& girth) {
  return RoastShape(Kind::cylinder, weight, girth);
}

PLATEWRIGHT_BODY RoastShape RoastShape::slab(const Mass& weight, const Length& thickness) {
  return RoastShape(Kind::slab, weight, thickness);
}

PLATEWRIGHT_BODY HeatPaths RoastShape::paths(double density) const {
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

PLATEWRIGHT_BODY RoastShape::RoastShape(Kind kind, Mass weight, Length across)
    : kind_(kind), weight_(std::move(weight)), across_(std::move(across)) {
  if (weight_ <= Mass{}) throw Failure(problems::number_not_positive("a weight", weight_text()));
  if (kind_ == Kind::sphere) return;
  const std::string measured = std::string(kind_ == Kind::cylinder ? "a girth" : "a thickness") +
                               " of " + as_short_decimal(across_.in(units::centimetre), 1) + " cm";
  if (across_ <= Length{}) throw Failure(problems::roast_shape_impossible(measured, weight_text()));
  // Meat is a little heavier than water, so that this lets every true measure pass.
  const double ball = RoastShape(Kind::sphere, weight_, {}).paths(1000).likely().radius;
  if (paths(1000).likely().radius > ball) {
    throw Failure(problems::roast_shape_impossible(measured, weight_text()));
  }
}

PLATEWRIGHT_BODY std::string RoastShape::weight_text() const {
  return as_short_decimal(weight_.in(units::kilogram), 3) + " kg";
}

PLATEWRIGHT_BODY RoastShape similar_shape(const RoastShape& shape, const Mass& weight) {
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
