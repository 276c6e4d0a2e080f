// SPDX-License-Identifier: MIT
#pragma once
// Whether a quote leaves what its rule asks for.

#include <optional>

#include "platewright/costing/income_of_price.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// What the bill of a quote does not come to.
enum class MarginFault {
  below_asked,  ///< what the pricing rule asks for
  loss,         ///< the cost of the event
};

/// A bill that comes to too little, and the full prices at which it does not, rounded up as the
/// price of the quote is. Guests who pay a share of the price pay that share of these.
struct MarginNotice {
  MarginFault fault;
  /// Covers the cost; nothing where no full price does.
  std::optional<Money> covering_price;
  /// Leaves what the rule asks for, where that is more than the cost.
  std::optional<Money> asked_price;
};

/// Nothing where the income comes to the cost and to what the rule asks for, to within less than
/// the smallest coin, which no one can pay. The price is rounded up, so that less is left only by
/// an agreed price, by what is off for the number of guests or by a discount, or by a rule that
/// looks at the food alone. It never fails.
std::optional<MarginNotice> margin_notice(const Quote& quote);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/margin_notice.hpp"
#endif
