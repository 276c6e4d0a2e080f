// SPDX-License-Identifier: MIT
#pragma once
// Prices that many plates are costed with, as whole numbers of one small part of a cent.

#include <cstddef>
#include <cstdint>
#include <limits>
#include <vector>

#include "platewright/costing/round_money.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/positive.hpp"

namespace platewright {

/// The prices of a list of packs, in the list's order. Each is kept exactly, and beside that as a
/// whole number of parts of the minor unit (cent), the same part for all: 1 where every price can
/// be paid, 100 where one is 0.0125 of a dollar. A price that is no such whole number below 2^62 is
/// marked, and whatever it is in is costed from the exact one.
class PlatePrices {
 public:
  /// Throws Failure for a price below 0.
  PlatePrices(const std::vector<Money>& prices, const Currency& currency);

  std::size_t size() const { return exact_.size(); }

  /// In minor units, exactly.
  const Rational& exact(std::size_t price) const { return exact_.at(price); }

  /// How many have no whole number.
  std::size_t marked() const { return marked_; }

  /// Another price for one pack. Throws Failure for one below 0. All others are looked at again
  /// only where the new one asks for another part, or is the first that is so large.
  void change(std::size_t price, const Money& to);

 private:
  friend class PlateTable;

  static constexpr std::uint64_t most = std::uint64_t{1} << 62;
  static constexpr std::uint64_t most_narrow = std::numeric_limits<std::uint32_t>::max();
  static constexpr std::uint64_t no_whole = std::numeric_limits<std::uint64_t>::max();

  Rational in_minor_units(const Money& price) const;

  /// The least part that all prices are whole numbers of, but for those that would make it smaller
  /// than a billionth.
  void find_parts();

  std::uint64_t whole_of(const Rational& price) const;

  void write_whole();

  Money minor_;
  std::vector<Rational> exact_;
  std::uint64_t parts_ = 1;            ///< of a minor unit
  std::vector<std::uint64_t> whole_;   ///< of parts; `no_whole` where there is none
  std::vector<std::uint32_t> narrow_;  ///< the same in half the memory, where all of them fit
  std::size_t marked_ = 0;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/plate_prices.hpp"
#endif
