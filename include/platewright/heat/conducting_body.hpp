// SPDX-License-Identifier: MIT
#pragma once
// Heat conduction from the surface of a body to its middle.

#include <cstddef>
#include <limits>
#include <vector>

#include "platewright/heat/detail/graded_grid.hpp"
#include "platewright/heat/detail/tridiagonal.hpp"
#include "platewright/heat/meat_properties.hpp"
#include "platewright/heat/roast_shape.hpp"
#include "platewright/problem/body.hpp"

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
  ConductingBody(const HeatPath& path, const ThermalProperties& material, double start_celsius);

  /// The longest step within the stated error, in s.
  double longest_step() const;

  /// Temperature of the middle in degrees Celsius: the parabola through the two innermost cells,
  /// level in the middle.
  double core() const;

  /// Temperature of the surface between the outermost cell and the surroundings.
  double surface(const Surroundings& around) const;

  /// The heat in the body above 0 degrees Celsius, in J for one unit of solid angle.
  double heat() const;

  /// Goes on by `seconds`. Returns the heat that came in through the surface, in the unit of
  /// `heat`.
  double step(double seconds, const Surroundings& around);

 private:
  /// An exchange so strong that the surface is as hot as what is around it.
  static constexpr double held_fast = 1e9;

  double capacity(std::size_t cell) const;
  /// W/K through the outer face of a cell that is not the last.
  double conductance(std::size_t cell) const;
  /// W/K from the outermost cell to the surroundings.
  double surface_conductance(const Surroundings& around) const;

  /// K/s of each cell at the end of an implicit step of `seconds` from `from`.
  std::vector<double> rates(const std::vector<double>& from, double seconds,
                            const Surroundings& around) const;

  double inflow(const std::vector<double>& from, const std::vector<double>& rate, double seconds,
                const Surroundings& around) const;

  HeatPath path_;
  ThermalProperties material_;
  detail::GradedGrid grid_;
  std::vector<double> celsius_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/conducting_body.hpp"
#endif
