// SPDX-License-Identifier: MIT
#pragma once
// How meat conducts and holds heat, from what it is made of.

#include <utility>

#include "platewright/number/nearest_double.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/heat.hpp"
#include "platewright/quantity/temperature.hpp"

namespace platewright {

/// Floating-point figures in SI units: they are measured to a few per cent, so that nothing would
/// be gained by fractions.
struct ThermalProperties {
  double conductivity = 0;   ///< W/(m K)
  double density = 0;        ///< kg/m3
  double heat_capacity = 0;  ///< J/(kg K)

  /// Thermal diffusivity in m2/s.
  double diffusivity() const { return conductivity / (density * heat_capacity); }
};

/// Shares of the weight of raw meat. What is left to 1 is ash.
class MeatComposition {
 public:
  /// Throws Failure for shares that no meat has.
  static MeatComposition of(const Rational& water, const Rational& protein, const Rational& fat);

  const Rational& water() const { return water_; }
  const Rational& protein() const { return protein_; }
  const Rational& fat() const { return fat_; }
  Rational ash() const { return Rational(1) - water_ - protein_ - fat_; }

 private:
  MeatComposition(Rational water, Rational protein, Rational fat)
      : water_(std::move(water)), protein_(std::move(protein)), fat_(std::move(fat)) {}

  Rational water_;
  Rational protein_;
  Rational fat_;
};

/// How the heat meets water, protein and fat: all side by side (the most that they can conduct),
/// one behind the other (the least), or half way between, which is nearest to what is measured in
/// meat.
enum class HeatFlow { side_by_side, in_a_row, between };

/// The properties of unfrozen meat at one temperature from those of its components (Y. Choi and
/// M. R. Okos, Effects of temperature and composition on the thermal properties of foods, in Food
/// Engineering and Process Applications, vol. 1, 1986, pp. 93-101): heat capacity by weight,
/// conductivity by volume, as the parallel and the series model of textbooks (ASHRAE Handbook,
/// Refrigeration, chapter Thermal properties of foods) add it up.
ThermalProperties thermal_properties(const MeatComposition& meat, const Temperature& at,
                                     HeatFlow flow);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/meat_properties.hpp"
#endif
