// SPDX-License-Identifier: MIT
// A client of core alone: 7 lb at 8.95 a pound is 62.65.

#include <platewright/number/read.hpp>
#include <platewright/quantity/quantity.hpp>
#include <platewright/quantity/units.hpp>

int main() {
  using namespace platewright;
  constexpr NamedUnit<MoneyDimension> unit_of_money{{1, 1}, "USD"};
  const Mass leg = Mass::of(7, units::pound);
  const PricePerMass price =
      Money::of(read_number("8.95"), unit_of_money) / Mass::of(1, units::pound);
  return (leg * price).in(unit_of_money) == fraction(6265, 100) ? 0 : 1;
}
