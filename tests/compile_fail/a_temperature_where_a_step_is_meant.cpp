// SPDX-License-Identifier: MIT
// says: Temperature
// says: TemperatureStepDimension
// never says: boost::
// short
// means: A temperature is used as a step between temperatures: a roast that rises by 5 C does not
// means: rise by the point 5 C of the scale.
// do: Take the difference of two temperatures, or write `TemperatureStep::of(5,
// do: units::celsius_step)`.
#include "platewright/quantity/temperature.hpp"

using namespace platewright;

TemperatureStep carry_over(const Temperature& pulled, const Temperature& rested) {
#ifdef BAD_LINE
  return rested;
#else
  return rested - pulled;
#endif
}
