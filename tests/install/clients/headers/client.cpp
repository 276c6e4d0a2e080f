// SPDX-License-Identifier: MIT
// A client of every floor as headers alone, in two sources: 7 lb at 8.95 a pound is 62.65.

#include <platewright/costing.hpp>
#include <platewright/day.hpp>
#include <platewright/event.hpp>
#include <platewright/heat.hpp>
#include <platewright/kitchen.hpp>
#include <platewright/number.hpp>
#include <platewright/problem.hpp>
#include <platewright/quantity.hpp>
#include <platewright/recipe.hpp>
#include <platewright/safety.hpp>
#include <platewright/worksheet.hpp>
#include <platewright/yield.hpp>

platewright::Amount bought();

int main() {
  using namespace platewright;
  constexpr NamedUnit<MoneyDimension> unit_of_money{{1, 1}, "USD"};
  const PricePerMass price =
      Money::of(read_number("8.95"), unit_of_money) / Mass::of(1, units::pound);
  return (to_mass(bought()) * price).in(unit_of_money) == fraction(6265, 100) ? 0 : 1;
}
