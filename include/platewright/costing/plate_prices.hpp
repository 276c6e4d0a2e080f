// SPDX-License-Identifier: MIT
#pragma once
// Prices that many plates are costed with, as whole numbers of one small part of a cent.

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <vector>

#include "platewright/costing/round_money.hpp"
#include "platewright/quantity/positive.hpp"

namespace platewright {

/// The prices of a list of packs, in the list's order. Each is kept exactly, and beside that as a
/// whole number of parts of the minor unit (cent), the same part for all: 1 where every price can
/// be paid, 100 where one is 0.0125 of a dollar. A price that is no such whole number below 2^62 is
/// marked, and whatever it is in is costed from the exact one.
class PlatePrices {
 public:
  /// Throws Failure for a price below 0.
  PlatePrices(const std::vector<Money>& prices, const Currency& currency)
      : minor_(minor_unit(currency)) {
    exact_.reserve(prices.size());
    for (const Money& price : prices) exact_.push_back(in_minor_units(price));
    write_whole();
  }

  std::size_t size() const { return exact_.size(); }

  /// In minor units, exactly.
  const Rational& exact(std::size_t price) const { return exact_.at(price); }

  /// How many have no whole number.
  std::size_t marked() const { return marked_; }

  /// Another price for one pack. Throws Failure for one below 0. All others are looked at again
  /// only where the new one asks for another part, or is the first that is so large.
  void change(std::size_t price, const Money& to) {
    exact_.at(price) = in_minor_units(to);
    const std::uint64_t whole = whole_of(exact_[price]);
    const bool as_before =
        whole != no_whole && whole_[price] != no_whole && (narrow_.empty() || whole <= most_narrow);
    if (!as_before) return write_whole();
    whole_[price] = whole;
    if (!narrow_.empty()) narrow_[price] = static_cast<std::uint32_t>(whole);
  }

 private:
  friend class PlateTable;

  static constexpr std::uint64_t most = std::uint64_t{1} << 62;
  static constexpr std::uint64_t most_narrow = std::numeric_limits<std::uint32_t>::max();
  static constexpr std::uint64_t no_whole = std::numeric_limits<std::uint64_t>::max();

  Rational in_minor_units(const Money& price) const {
    check_not_negative("a price", price);
    return price / minor_;
  }

  /// The least part that all prices are whole numbers of, but for those that would make it smaller
  /// than a billionth.
  void find_parts() {
    constexpr std::uint64_t most_parts = 1'000'000'000;
    Integer parts = 1;
    for (const Rational& price : exact_) {
      const Integer all = boost::multiprecision::lcm(parts, denominator_of(price));
      if (all <= most_parts) parts = all;
    }
    parts_ = parts.convert_to<std::uint64_t>();
  }

  std::uint64_t whole_of(const Rational& price) const {
    const Rational whole = price * Rational(parts_);
    if (!is_whole(whole) || whole > Rational(most)) return no_whole;
    return numerator_of(whole).convert_to<std::uint64_t>();
  }

  void write_whole() {
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

  Money minor_;
  std::vector<Rational> exact_;
  std::uint64_t parts_ = 1;            ///< of a minor unit
  std::vector<std::uint64_t> whole_;   ///< of parts; `no_whole` where there is none
  std::vector<std::uint32_t> narrow_;  ///< the same in half the memory, where all of them fit
  std::size_t marked_ = 0;
};

}  // namespace platewright
