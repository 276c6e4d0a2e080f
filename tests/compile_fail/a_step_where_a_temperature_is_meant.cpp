// SPDX-License-Identifier: MIT
// says: Temperature
// says: TemperatureStepDimension
// never says: boost::
// short
// means: A step between two temperatures is used as a temperature. A step of 60 C is not the point
// means: 60 C on the scale.
// do: Write `Temperature::celsius(60)`, or add the step to a temperature.
#include "platewright/quantity/temperature.hpp"

using namespace platewright;

Temperature rested([[maybe_unused]] const Temperature& pulled, const TemperatureStep& rise) {
#ifdef BAD_LINE
  return rise;
#else
  return pulled + rise;
#endif
}
