// SPDX-License-Identifier: MIT
#pragma once
// A price list in another currency.

#include <utility>

#include "platewright/costing/price_list.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The list with every sum exactly in `currency`, of which one unit of the list's own currency is
/// `own.rate`. An offer says in which currency it was written, at which rate to the new one.
PriceList in_currency(PriceList prices, const Currency& currency, const ForeignCurrency& own);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/converted_prices.hpp"
#endif
