// SPDX-License-Identifier: MIT
// says: TemperatureStepDimension
// says: MassDimension
// never says: boost::
// short
// means: A step between temperatures is asked for in a unit of another dimension.
// do: Ask for it in `units::celsius_step` or `units::fahrenheit_step`.
#include "platewright/quantity/temperature.hpp"
#include "platewright/quantity/units.hpp"

using namespace platewright;

Rational rise(const TemperatureStep& step) {
#ifdef BAD_LINE
  return step.in(units::gram);
#else
  return step.in(units::celsius_step);
#endif
}
