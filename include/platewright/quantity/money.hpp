// SPDX-License-Identifier: MIT
#pragma once
// Money, and in which currency it is.

#include <string_view>

#include "platewright/number/read.hpp"
#include "platewright/quantity/currency.hpp"
#include "platewright/quantity/quantity.hpp"

namespace platewright::units {

/// One whole unit of the currency that a price list is in (a dollar, a euro).
inline constexpr NamedUnit<MoneyDimension> currency_unit{{1, 1}, "currency unit"};

}  // namespace platewright::units

namespace platewright {

/// A sum that says in which currency it is: `18.50_eur`. An offer keeps the currency, and
/// `PriceList::add` of a list in another one refuses the offer. As plain `Money` it is counted in
/// the currency of the list that it goes into: from there on two currencies can't be told apart,
/// nor is an offer checked that is put into the entries of a list directly.
struct SumIn {
  Money money;
  Currency currency;

  operator Money() const { return money; }
  template <class Dimension>
  friend auto operator/(const SumIn& sum, const Quantity<Dimension>& quantity) {
    return sum.money / quantity;
  }
  friend SumIn operator*(const SumIn& sum, const Rational& factor) {
    return {sum.money * factor, sum.currency};
  }
};

/// The digits as they are written, in a currency: `sum_in("62.65", "USD")`. Throws Failure for what
/// is no number and for what is no currency's code.
inline SumIn sum_in(std::string_view digits, std::string_view currency) {
  return {Money::of(read_number(digits), units::currency_unit), Currency(currency)};
}

namespace literals {
inline SumIn operator""_usd(const char* n) {
  return sum_in(n, "USD");
}
inline SumIn operator""_eur(const char* n) {
  return sum_in(n, "EUR");
}
inline SumIn operator""_gbp(const char* n) {
  return sum_in(n, "GBP");
}
}  // namespace literals

}  // namespace platewright
