// SPDX-License-Identifier: MIT
#pragma once
// Which part of a bill each of several payers pays.

#include <string>
#include <vector>

#include "platewright/costing/quote.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/number/apportion.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

struct PayerShare {
  std::string payer;  ///< empty: the client
  Money guests;       ///< what the lines of their guests come to
  Money share;        ///< of the total
};

/// The client pays the extras with their tax, the guests of no other payer, and who was guaranteed
/// and does not come; all else of the total (discounts, minimum charge, service, gratuity, tax) is
/// shared in proportion to what the guests' lines come to. The shares are rounded to the minor unit
/// by the largest-remainder method and sum to the total. The client comes first.
std::vector<PayerShare> divide_bill(const Quote& quote);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/divide_bill.hpp"
#endif
