// SPDX-License-Identifier: MIT
#pragma once
// Questions asked of a quote, and their answers.

#include <string>
#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/event/budget.hpp"
#include "platewright/event/guest_table.hpp"
#include "platewright/event/margin_risk.hpp"
#include "platewright/event/price_movers.hpp"

namespace platewright {

/// Before and after a change, figure by figure, as a block above the quote that came of it.
Table what_if_table(const Quote& before, const Quote& after, const PriceList& prices);

/// The price of a guest for each number of guests.
Sheet guest_table_sheet(const Event& event, const std::vector<GuestTableRow>& rows,
                        const PriceList& prices);

/// The greatest movers of the price at a change of this share.
Sheet movers_sheet(const Event& event, const std::vector<PriceMover>& movers,
                   const Rational& change, const PriceList& prices);

/// Which cuts and portions fit the budget.
Sheet budget_sheet(const Event& event, const Budget& budget, const BudgetAnswer& answer,
                   const Unit& weight, const PriceList& prices);

/// The chance that the margin falls below a floor, with its error, seed and number of draws.
Sheet margin_risk_sheet(const Event& event, const Quote& quote, const MarginRisk& risk,
                        const PriceList& prices);

}  // namespace platewright
