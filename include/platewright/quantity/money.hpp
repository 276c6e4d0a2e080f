#pragma once
// Money as a quantity. Which currency it is, the book says; a sheet never mixes two.

#include "platewright/quantity/quantity.hpp"

namespace platewright::units {

/// One whole unit of the book's currency (a dollar, a euro).
inline constexpr NamedUnit<MoneyDimension> currency_unit{{1, 1}, "currency unit"};

}  // namespace platewright::units
