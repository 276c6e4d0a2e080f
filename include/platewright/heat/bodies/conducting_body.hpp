// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/conducting_body.hpp.

#include <algorithm>
#include <utility>

#include "platewright/heat/conducting_body.hpp"

namespace platewright {

PLATEWRIGHT_BODY ConductingBody::ConductingBody(const HeatPath& path,
                                                const ThermalProperties& material,
                                                double start_celsius)
    : path_(path),
      material_(material),
      grid_(detail::GradedGrid::along(path, 60)),
      celsius_(grid_.size(), start_celsius) {}

PLATEWRIGHT_BODY double ConductingBody::longest_step() const {
  return path_.radius * path_.radius / (1000 * material_.diffusivity());
}

PLATEWRIGHT_BODY double ConductingBody::core() const {
  const double near = grid_.middles[0] * grid_.middles[0];
  const double far = grid_.middles[1] * grid_.middles[1];
  return (celsius_[0] * far - celsius_[1] * near) / (far - near);
}

PLATEWRIGHT_BODY double ConductingBody::surface(const Surroundings& around) const {
  const double inside = material_.conductivity / (path_.radius - grid_.middles.back());
  const double dry =
      (inside * celsius_.back() + around.exchange * around.celsius) / (inside + around.exchange);
  return std::min(dry, around.hottest_surface);
}

PLATEWRIGHT_BODY double ConductingBody::heat() const {
  double out = 0;
  for (std::size_t i = 0; i < grid_.size(); ++i) out += capacity(i) * celsius_[i];
  return out;
}

PLATEWRIGHT_BODY double ConductingBody::step(double seconds, const Surroundings& around) {
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

PLATEWRIGHT_BODY double ConductingBody::capacity(std::size_t cell) const {
  return material_.density * material_.heat_capacity * grid_.volumes[cell];
}

PLATEWRIGHT_BODY double ConductingBody::conductance(std::size_t cell) const {
  return material_.conductivity * grid_.areas[cell] /
         (grid_.middles[cell + 1] - grid_.middles[cell]);
}

PLATEWRIGHT_BODY double ConductingBody::surface_conductance(const Surroundings& around) const {
  const double inside = (path_.radius - grid_.middles.back()) / material_.conductivity;
  return around.exchange * grid_.areas.back() / (1 + around.exchange * inside);
}

PLATEWRIGHT_BODY std::vector<double> ConductingBody::rates(const std::vector<double>& from,
                                                           double seconds,
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

PLATEWRIGHT_BODY double ConductingBody::inflow(const std::vector<double>& from,
                                               const std::vector<double>& rate, double seconds,
                                               const Surroundings& around) const {
  return surface_conductance(around) * (around.celsius - from.back() - seconds * rate.back());
}

}  // namespace platewright
