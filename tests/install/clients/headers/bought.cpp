// SPDX-License-Identifier: MIT
// What the client of the headers has bought, read by the same functions in a second source.

#include <platewright/quantity/read_amount.hpp>

platewright::Amount bought();

platewright::Amount bought() {
  return platewright::read_amount("7 lb", platewright::UnitTable(),
                                  platewright::MeasuringSystem::us);
}
