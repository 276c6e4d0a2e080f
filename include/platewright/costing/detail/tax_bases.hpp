// SPDX-License-Identifier: MIT
#pragma once
// What of a bill is taxed at which rate.

#include <cstddef>
#include <utility>
#include <vector>

#include "platewright/costing/quote.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/number/apportion.hpp"

namespace platewright::detail {

/// Adds sums up by the rates at which they are taxed. A sum of several rates is shared out to the
/// minor unit by the largest-remainder method, so that the parts sum to it.
class TaxBases {
 public:
  TaxBases(const QuoteTerms& terms, Money minor)
      : terms_(terms), minor_(std::move(minor)), bases_(terms.tax.size()) {}

  void add(const Money& sum, const Taxed& taxed) {
    if (!taxed) return;
    if (taxed.parts().size() == 1 && taxed.parts().front().share == 1) {
      bases_.at(taxed.parts().front().rate) += sum;
      return;
    }
    std::vector<Rational> parts;
    Rational rest = sum / minor_;
    for (const TaxedPart& part : taxed.parts()) {
      parts.push_back(sum / minor_ * part.share);
      rest -= parts.back();
    }
    parts.push_back(rest);
    const std::vector<Rational> whole = apportion(parts, 1);
    for (std::size_t i = 0; i < taxed.parts().size(); ++i) {
      bases_.at(taxed.parts()[i].rate) += minor_ * whole[i];
    }
  }

  /// A line for each rate, its tax rounded half up to the minor unit.
  std::vector<TaxLine> lines() const {
    std::vector<TaxLine> out;
    for (std::size_t i = 0; i < bases_.size(); ++i) {
      const TaxRate& rate = terms_.tax[i];
      const Rational share =
          terms_.prices_include_tax ? Rational(rate.share / (1 + rate.share)) : rate.share;
      out.push_back({rate, bases_[i], round_money(bases_[i] * share, minor_, Rounding::half_up)});
    }
    return out;
  }

 private:
  const QuoteTerms& terms_;
  Money minor_;
  std::vector<Money> bases_;
};

}  // namespace platewright::detail
