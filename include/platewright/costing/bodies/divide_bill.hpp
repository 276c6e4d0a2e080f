// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/divide_bill.hpp.

#include <algorithm>

#include "platewright/costing/divide_bill.hpp"

namespace platewright {

namespace detail {

/// Extras on a bill with the tax that comes on top of them, exactly.
PLATEWRIGHT_BODY Money extras_with_tax(const Quote& quote) {
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

PLATEWRIGHT_BODY std::vector<PayerShare> divide_bill(const Quote& quote) {
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
