// SPDX-License-Identifier: MIT
// says: Temperature
// says: delete
// never says: boost::
// short
// means: Two temperatures are added. 60 C and 5 C do not make 65 C of anything: a temperature is a
// means: point on a scale, and only a step can be added to it.
// do: Make the second one a `TemperatureStep`; the difference of two temperatures is one, too.
#include "platewright/quantity/temperature.hpp"

using namespace platewright;

Temperature after_resting(const Temperature& pulled) {
#ifdef BAD_LINE
  return pulled + Temperature::celsius(5);
#else
  return pulled + TemperatureStep::of(5, units::celsius_step);
#endif
}
