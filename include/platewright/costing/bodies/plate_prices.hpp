// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/plate_prices.hpp.

#include <algorithm>

#include "platewright/costing/plate_prices.hpp"

namespace platewright {

PLATEWRIGHT_BODY PlatePrices::PlatePrices(const std::vector<Money>& prices,
                                          const Currency& currency)
    : minor_(minor_unit(currency)) {
  exact_.reserve(prices.size());
  for (const Money& price : prices) exact_.push_back(in_minor_units(price));
  write_whole();
}

PLATEWRIGHT_BODY void PlatePrices::change(std::size_t price, const Money& to) {
  exact_.at(price) = in_minor_units(to);
  const std::uint64_t whole = whole_of(exact_[price]);
  const bool as_before =
      whole != no_whole && whole_[price] != no_whole && (narrow_.empty() || whole <= most_narrow);
  if (!as_before) return write_whole();
  whole_[price] = whole;
  if (!narrow_.empty()) narrow_[price] = static_cast<std::uint32_t>(whole);
}

PLATEWRIGHT_BODY Rational PlatePrices::in_minor_units(const Money& price) const {
  check_not_negative("a price", price);
  return price / minor_;
}

PLATEWRIGHT_BODY void PlatePrices::find_parts() {
  constexpr std::uint64_t most_parts = 1'000'000'000;
  Integer parts = 1;
  for (const Rational& price : exact_) {
    const Integer all = boost::multiprecision::lcm(parts, denominator_of(price));
    if (all <= most_parts) parts = all;
  }
  parts_ = parts.convert_to<std::uint64_t>();
}

PLATEWRIGHT_BODY std::uint64_t PlatePrices::whole_of(const Rational& price) const {
  const Rational whole = price * Rational(parts_);
  if (!is_whole(whole) || whole > Rational(most)) return no_whole;
  return numerator_of(whole).convert_to<std::uint64_t>();
}

PLATEWRIGHT_BODY void PlatePrices::write_whole() {
  find_parts();
  whole_.clear();
  narrow_.clear();
  for (const Rational& price : exact_) whole_.push_back(whole_of(price));
  marked_ = static_cast<std::size_t>(std::count(whole_.begin(), whole_.end(), no_whole));
  for (const std::uint64_t whole : whole_) {
    if (whole > most_narrow) return narrow_.clear();
    narrow_.push_back(static_cast<std::uint32_t>(whole));
  }
}

}  // namespace platewright
