// SPDX-License-Identifier: MIT
// says: Temperature
// says: TemperatureStepDimension
// says: delete
// never says: boost::
// short
// means: A temperature is compared with a step between temperatures.
// do: Compare two temperatures, or two steps.
#include "platewright/quantity/temperature.hpp"

using namespace platewright;

bool is_done(const Temperature& inside, const TemperatureStep& step) {
#ifdef BAD_LINE
  return inside >= step;
#else
  return inside >= Temperature::celsius(0) + step;
#endif
}
