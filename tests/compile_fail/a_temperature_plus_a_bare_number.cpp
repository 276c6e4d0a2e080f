// SPDX-License-Identifier: MIT
// says: Temperature
// says: int
// says: delete
// never says: boost::
// short
// means: A number without a unit is added to a temperature; five degrees of which scale?
// do: Name the scale's step: `TemperatureStep::of(5, units::celsius_step)` or
// do: `units::fahrenheit_step`.
#include "platewright/quantity/temperature.hpp"

using namespace platewright;

Temperature after_resting(const Temperature& pulled) {
#ifdef BAD_LINE
  return pulled + 5;
#else
  return pulled + TemperatureStep::of(5, units::celsius_step);
#endif
}
