// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/detail/tax_bases.hpp.

#include <cstddef>

#include "platewright/costing/detail/tax_bases.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY void TaxBases::add(const Money& sum, const Taxed& taxed) {
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

PLATEWRIGHT_BODY std::vector<TaxLine> TaxBases::lines() const {
  std::vector<TaxLine> out;
  for (std::size_t i = 0; i < bases_.size(); ++i) {
    const TaxRate& rate = terms_.tax[i];
    const Rational share =
        terms_.prices_include_tax ? Rational(rate.share / (1 + rate.share)) : rate.share;
    out.push_back({rate, bases_[i], round_money(bases_[i] * share, minor_, Rounding::half_up)});
  }
  return out;
}

}  // namespace platewright::detail
