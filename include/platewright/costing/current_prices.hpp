// SPDX-License-Identifier: MIT
#pragma once
// Which of many offers counts by day, and with a unit price rounded or not.

#include <chrono>
#include <optional>
#include <vector>

#include "platewright/costing/price_list.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/costing/same_offer.hpp"
#include "platewright/costing/unit_price.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

namespace detail {

/// Nothing where there is no offer.
std::optional<std::chrono::local_days> first_day(const std::vector<Purchase>& history);

}  // namespace detail

/// The price list of one day: of every offer (one supplier, one pack) the newest price on or before
/// it, the newest of all where no day is given. They stay in the order of the book. An ingredient
/// all of whose prices are later has none left, and keeps the day of the first.
PriceList current_prices(PriceList history, const std::optional<std::chrono::local_days>& day);

/// The whole history with the newest price of every offer in front, for whoever asks about no day.
PriceList with_newest_first(PriceList history);

/// The same list with the price of every unit (a pound, a piece) rounded half up to the minor unit
/// before anything is multiplied by it, as some printed sheets do. Not exact: only for whoever has
/// to agree with such a sheet.
PriceList with_unit_prices_rounded(PriceList prices);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/current_prices.hpp"
#endif
