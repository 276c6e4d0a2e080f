// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/meat_properties.hpp.

#include <array>

#include "platewright/heat/meat_properties.hpp"

namespace platewright {

PLATEWRIGHT_BODY MeatComposition MeatComposition::of(const Rational& water, const Rational& protein,
                                                     const Rational& fat) {
  if (water * 2 < 1 || protein < 0 || fat < 0 || water + protein + fat > 1) {
    throw Failure(problems::composition_not_meat(
        as_short_decimal(water * 100, 1) + " % water, " + as_short_decimal(protein * 100, 1) +
        " % protein, " + as_short_decimal(fat * 100, 1) + " % fat"));
  }
  return MeatComposition(water, protein, fat);
}

namespace detail {

/// A + B T + C T^2, T in degrees Celsius.
struct Quadratic {
  double a;
  double b;
  double c;

  double at(double celsius) const { return a + celsius * (b + celsius * c); }
};

/// One component of food after Choi and Okos (1986), as reprinted in food engineering textbooks.
struct FoodComponent {
  Quadratic conductivity;   ///< W/(m K)
  Quadratic density;        ///< kg/m3
  Quadratic heat_capacity;  ///< kJ/(kg K)
};

struct FoodShare {
  double share;
  const FoodComponent& component;
};

inline constexpr FoodComponent water_component{{0.57109, 1.7625e-3, -6.7036e-6},
                                               {997.18, 3.1439e-3, -3.7574e-3},
                                               {4.1762, -9.0864e-5, 5.4731e-6}};

inline constexpr FoodComponent protein_component{
    {0.17881, 1.1958e-3, -2.7178e-6}, {1329.9, -0.5184, 0}, {2.0082, 1.2089e-3, -1.3129e-6}};

inline constexpr FoodComponent fat_component{
    {0.18071, -2.7604e-4, -1.7749e-7}, {925.59, -0.41757, 0}, {1.9842, 1.4733e-3, -4.8008e-6}};

/// From memory.
inline constexpr FoodComponent ash_component{
    {0.32962, 1.4011e-3, -2.9069e-6}, {2423.8, -0.28063, 0}, {1.0926, 1.8896e-3, -3.6817e-6}};

}  // namespace detail

PLATEWRIGHT_BODY ThermalProperties thermal_properties(const MeatComposition& meat,
                                                      const Temperature& at, HeatFlow flow) {
  const double celsius = nearest_double(at.in_celsius());
  const std::array<detail::FoodShare, 4> parts{
      {{nearest_double(meat.water()), detail::water_component},
       {nearest_double(meat.protein()), detail::protein_component},
       {nearest_double(meat.fat()), detail::fat_component},
       {nearest_double(meat.ash()), detail::ash_component}}};
  double volume = 0;
  double side_by_side = 0;
  double resistance = 0;
  ThermalProperties out;
  for (const detail::FoodShare& part : parts) {
    const double own_volume = part.share / part.component.density.at(celsius);
    volume += own_volume;
    side_by_side += own_volume * part.component.conductivity.at(celsius);
    resistance += own_volume / part.component.conductivity.at(celsius);
    out.heat_capacity += part.share * part.component.heat_capacity.at(celsius) * 1000;
  }
  out.density = 1 / volume;
  side_by_side /= volume;
  const double in_a_row = volume / resistance;
  switch (flow) {
    case HeatFlow::side_by_side:
      out.conductivity = side_by_side;
      break;
    case HeatFlow::in_a_row:
      out.conductivity = in_a_row;
      break;
    case HeatFlow::between:
      out.conductivity = (side_by_side + in_a_row) / 2;
      break;
  }
  return out;
}

}  // namespace platewright
