// SPDX-License-Identifier: MIT
#pragma once
// Which part of a bill each of several payers pays.

#include <algorithm>
#include <string>
#include <vector>

#include "platewright/costing/quote.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/number/apportion.hpp"

namespace platewright {

struct PayerShare {
  std::string payer;  ///< empty: the client
  Money guests;       ///< what the lines of their guests come to
  Money share;        ///< of the total
};

namespace detail {

/// Extras on a bill with the tax that comes on top of them, exactly.
inline Money extras_with_tax(const Quote& quote) {
  Money out;
  for (const BilledExtra& extra : quote.billed) {
    Rational tax;
    for (const TaxedPart& part : extra.cost.line.taxed.parts()) {
      tax += part.share * quote.terms.tax[part.rate].share;
    }
    out += extra.left * Rational(quote.terms.prices_include_tax ? Rational(1) : Rational(1 + tax));
  }
  return out;
}

}  // namespace detail

/// The client pays the extras with their tax, the guests of no other payer, and who was guaranteed
/// and does not come; all else of the total (discounts, minimum charge, service, gratuity, tax) is
/// shared in proportion to what the guests' lines come to. The shares are rounded to the minor unit
/// by the largest-remainder method and sum to the total. The client comes first.
inline std::vector<PayerShare> divide_bill(const Quote& quote) {
  std::vector<PayerShare> out{PayerShare{}};
  Money lines;
  const auto add = [&](const QuoteLine& line) {
    auto found = std::find_if(out.begin(), out.end(), [&](const PayerShare& share) {
      return share.payer == line.guests.payer;
    });
    if (found == out.end()) found = out.insert(out.end(), PayerShare{line.guests.payer, {}, {}});
    found->guests += line.amount;
    lines += line.amount;
  };
  for (const QuoteLine& line : quote.lines) add(line);
  if (quote.missing) add(*quote.missing);
  const Money minor = minor_unit(quote.currency);
  const Money extras = detail::extras_with_tax(quote);
  std::vector<Rational> exact;
  for (const PayerShare& payer : out) {
    exact.push_back((quote.total - extras) * (payer.guests / lines) / minor);
  }
  exact.front() += extras / minor;
  const std::vector<Rational> whole = apportion(exact, 1);
  for (std::size_t i = 0; i < out.size(); ++i) out[i].share = minor * whole[i];
  return out;
}

}  // namespace platewright
