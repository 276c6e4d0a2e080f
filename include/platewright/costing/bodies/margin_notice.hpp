// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/margin_notice.hpp.

#include <algorithm>

#include "platewright/costing/margin_notice.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<MarginNotice> margin_notice(const Quote& quote) {
  const Money coin = minor_unit(quote.currency);
  const bool loss = quote.cost - quote.income >= coin;
  if (!loss && quote.target - quote.income < coin) return std::nullopt;
  const Money step = quote.terms.round_up_to.value_or(minor_unit(quote.currency));
  const IncomeOfPrice income = IncomeOfPrice::with_discounts(quote);
  const auto price_of = [&](const Money& all) -> std::optional<Money> {
    const auto exact = income.price_for(all);
    if (!exact) return std::nullopt;
    return round_money(std::max(*exact, Money()), step, Rounding::up);
  };
  return MarginNotice{loss ? MarginFault::loss : MarginFault::below_asked, price_of(quote.cost),
                      price_of(std::max(quote.target, quote.cost))};
}

}  // namespace platewright
