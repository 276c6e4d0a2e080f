// SPDX-License-Identifier: MIT
#pragma once
// What of a bill is taxed at which rate.

#include <utility>
#include <vector>

#include "platewright/costing/quote.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/number/apportion.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

/// Adds sums up by the rates at which they are taxed. A sum of several rates is shared out to the
/// minor unit by the largest-remainder method, so that the parts sum to it.
class TaxBases {
 public:
  TaxBases(const QuoteTerms& terms, Money minor)
      : terms_(terms), minor_(std::move(minor)), bases_(terms.tax.size()) {}

  void add(const Money& sum, const Taxed& taxed);

  /// A line for each rate, its tax rounded half up to the minor unit.
  std::vector<TaxLine> lines() const;

 private:
  const QuoteTerms& terms_;
  Money minor_;
  std::vector<Money> bases_;
};

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/detail/tax_bases.hpp"
#endif
