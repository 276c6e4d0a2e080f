// SPDX-License-Identifier: MIT
#pragma once
// Heat conduction from the surface of a body to its middle.

#include <algorithm>
#include <cstddef>
#include <limits>
#include <utility>
#include <vector>

#include "platewright/heat/detail/graded_grid.hpp"
#include "platewright/heat/detail/tridiagonal.hpp"
#include "platewright/heat/meat_properties.hpp"
#include "platewright/heat/roast_shape.hpp"

namespace platewright {

/// What is around a body: an oven, a room.
struct Surroundings {
  double celsius = 0;
  /// Surface exchange coefficient, radiation counted in, in W/(m2 K).
  double exchange = 0;
  /// What the surface never passes. Where water boils in it, the heat that comes beyond goes off as
  /// steam and not into the body.
  double hottest_surface = std::numeric_limits<double>::infinity();
};

/// A body of one material that takes heat in through its surface. Finite volumes on 60 graded
/// cells; time by the two-stage, second-order, L-stable implicit method of Alexander (1977,
/// Diagonally implicit Runge-Kutta methods for stiff O.D.E.s, SIAM J. Numer. Anal. 14), which needs
/// no small steps when the door of the oven opens. Against the series solution the temperature of
/// the middle is off by less than 1e-3 of the difference between oven and start for steps up to
/// radius^2 / (1000 x diffusivity); energy is conserved to the rounding of `double`.
class ConductingBody {
 public:
  ConductingBody(const HeatPath& path, const ThermalProperties& material, double start_celsius)
      : path_(path),
        material_(material),
        grid_(detail::GradedGrid::along(path, 60)),
        celsius_(grid_.size(), start_celsius) {}

  /// The longest step within the stated error, in s.
  double longest_step() const {
    return path_.radius * path_.radius / (1000 * material_.diffusivity());
  }

  /// Temperature of the middle in degrees Celsius: the parabola through the two innermost cells,
  /// level in the middle.
  double core() const {
    const double near = grid_.middles[0] * grid_.middles[0];
    const double far = grid_.middles[1] * grid_.middles[1];
    return (celsius_[0] * far - celsius_[1] * near) / (far - near);
  }

  /// Temperature of the surface between the outermost cell and the surroundings.
  double surface(const Surroundings& around) const {
    const double inside = material_.conductivity / (path_.radius - grid_.middles.back());
    const double dry =
        (inside * celsius_.back() + around.exchange * around.celsius) / (inside + around.exchange);
    return std::min(dry, around.hottest_surface);
  }

  /// The heat in the body above 0 degrees Celsius, in J for one unit of solid angle.
  double heat() const {
    double out = 0;
    for (std::size_t i = 0; i < grid_.size(); ++i) out += capacity(i) * celsius_[i];
    return out;
  }

  /// Goes on by `seconds`. Returns the heat that came in through the surface, in the unit of
  /// `heat`.
  double step(double seconds, const Surroundings& around) {
    if (surface(around) >= around.hottest_surface) {
      return step(seconds, {around.hottest_surface, held_fast});
    }
    constexpr double gamma = 1 - 0.70710678118654752440;  // 1 - 1 / sqrt(2)
    const std::vector<double> first = rates(celsius_, gamma * seconds, around);
    std::vector<double> between = celsius_;
    for (std::size_t i = 0; i < between.size(); ++i) between[i] += (1 - gamma) * seconds * first[i];
    const std::vector<double> second = rates(between, gamma * seconds, around);
    const double flow_first = inflow(celsius_, first, gamma * seconds, around);
    const double flow_second = inflow(between, second, gamma * seconds, around);
    for (std::size_t i = 0; i < celsius_.size(); ++i) {
      celsius_[i] = between[i] + gamma * seconds * second[i];
    }
    return seconds * ((1 - gamma) * flow_first + gamma * flow_second);
  }

 private:
  /// An exchange so strong that the surface is as hot as what is around it.
  static constexpr double held_fast = 1e9;

  double capacity(std::size_t cell) const {
    return material_.density * material_.heat_capacity * grid_.volumes[cell];
  }
  /// W/K through the outer face of a cell that is not the last.
  double conductance(std::size_t cell) const {
    return material_.conductivity * grid_.areas[cell] /
           (grid_.middles[cell + 1] - grid_.middles[cell]);
  }
  /// W/K from the outermost cell to the surroundings.
  double surface_conductance(const Surroundings& around) const {
    const double inside = (path_.radius - grid_.middles.back()) / material_.conductivity;
    return around.exchange * grid_.areas.back() / (1 + around.exchange * inside);
  }

  /// K/s of each cell at the end of an implicit step of `seconds` from `from`.
  std::vector<double> rates(const std::vector<double>& from, double seconds,
                            const Surroundings& around) const {
    const std::size_t last = grid_.size() - 1;
    detail::Tridiagonal system(grid_.size());
    for (std::size_t i = 0; i <= last; ++i) {
      const double inner = i == 0 ? 0 : conductance(i - 1);
      const double outer = i == last ? surface_conductance(around) : conductance(i);
      const double outside = i == last ? around.celsius : from[i + 1];
      const double inside = i == 0 ? from[0] : from[i - 1];
      system.below[i] = -seconds * inner;
      system.diagonal[i] = capacity(i) + seconds * (inner + outer);
      system.above[i] = i == last ? 0 : -seconds * outer;
      system.right[i] = inner * (inside - from[i]) + outer * (outside - from[i]);
    }
    return std::move(system).solved();
  }

  double inflow(const std::vector<double>& from, const std::vector<double>& rate, double seconds,
                const Surroundings& around) const {
    return surface_conductance(around) * (around.celsius - from.back() - seconds * rate.back());
  }

  HeatPath path_;
  ThermalProperties material_;
  detail::GradedGrid grid_;
  std::vector<double> celsius_;
};

}  // namespace platewright
