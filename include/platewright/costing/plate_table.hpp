// SPDX-License-Identifier: MIT
#pragma once
// A great many plates, costed again to the exact cent whenever prices change.

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <map>
#include <span>
#include <stdexcept>
#include <vector>

#include "platewright/costing/plate_prices.hpp"
#include "platewright/number/wide_whole.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// What a line of a plate takes of a pack: purchased amount / what the pack holds, the yield in it.
struct PriceShare {
  std::uint32_t price = 0;  ///< the place of the pack's price among the prices
  Rational share;           ///< the line costs this share of it
};

/// Plates as shares of prices. A plate costs the sum of share x price over its lines; `recost`
/// rounds that half up to the minor unit, as `round_money` does, and never otherwise.
///
/// The shares of a plate are kept as whole numbers over one denominator, their sum below 2^62, so
/// that with whole prices the plate is a sum of 128 bits and one division. Nothing is rounded
/// before it and no floating-point number decides. A plate whose shares have no such denominator,
/// or whose cost does not fit, is costed in fractions of any size, and counted.
class PlateTable {
 public:
  /// The next plate. Throws Failure for a share below 0.
  void add(const std::vector<PriceShare>& lines) {
    Integer denominator = 1;
    const Integer limit = most;
    for (const PriceShare& line : lines) {
      check_not_negative("a share of a pack", line.share);
      if (line.price >= prices_needed_) prices_needed_ = std::size_t{line.price} + 1;
      if (denominator > limit) continue;
      denominator = boost::multiprecision::lcm(denominator, denominator_of(line.share));
    }
    const bool fits = denominator <= limit && sum_over(denominator, lines) <= limit;
    if (!fits) wide_.emplace(size(), lines);
    for (const PriceShare& line : lines) {
      prices_.push_back(line.price);
      shares_.push_back(
          fits ? numerator_of(line.share * Rational(denominator)).convert_to<std::uint64_t>() : 0);
    }
    denominators_.push_back(fits ? denominator.convert_to<std::uint64_t>() : 0);
    ends_.push_back(prices_.size());
  }

  /// Plates.
  std::size_t size() const { return denominators_.size(); }
  /// Lines of all plates.
  std::size_t lines() const { return prices_.size(); }
  /// Plates whose shares have no denominator that fits.
  std::size_t wide() const { return wide_.size(); }
  /// What a plate costs in minor units, exactly: fractions of any size from end to end.
  Rational exact_cost(std::size_t plate, const PlatePrices& prices) const {
    Rational sum;
    if (const auto wide = wide_.find(plate); wide != wide_.end()) {
      for (const PriceShare& line : wide->second) sum += line.share * prices.exact(line.price);
      return sum;
    }
    const Integer denominator = denominators_.at(plate);
    for (std::size_t i = ends_[plate]; i < ends_[plate + 1]; ++i) {
      sum += Rational(Integer(shares_[i]), denominator) * prices.exact(prices_[i]);
    }
    return sum;
  }

  /// Writes the costs of the plates from `first` on, in whole minor units, as many as `costs`
  /// takes; returns how many of them were costed in fractions. Parts of one table may be written at
  /// the same time. Throws Failure for a cost of more than 18 digits, std::out_of_range where the
  /// table has fewer plates than asked for or needs more prices than there are.
  std::size_t recost(const PlatePrices& prices, std::size_t first,
                     std::span<std::int64_t> costs) const {
    if (first > size() || costs.size() > size() - first) {
      throw std::out_of_range("more plates asked for than the table has");
    }
    if (prices_needed_ > prices.size()) throw std::out_of_range("fewer prices than plates need");
    if (prices.narrow_.size() == prices.size())
      return recost_with<false>(prices.narrow_, prices, first, costs);
    if (prices.marked_ == 0) return recost_with<false>(prices.whole_, prices, first, costs);
    return recost_with<true>(prices.whole_, prices, first, costs);
  }

 private:
  static constexpr std::uint64_t most = std::uint64_t{1} << 62;
  /// The memory of so many lines further on is asked for, across the borders of pages, too, where
  /// processors stop to do so by themselves.
  static constexpr std::size_t lines_ahead = 512;

  /// The whole number that a share is over a denominator of which its own is a part.
  static Integer over(const Integer& denominator, const Rational& share) {
    return numerator_of(share) * (denominator / denominator_of(share));
  }
  static Integer sum_over(const Integer& denominator, const std::vector<PriceShare>& lines) {
    Integer sum = 0;
    for (const PriceShare& line : lines) sum += over(denominator, line.share);
    return sum;
  }

  template <bool Marked, class Whole>
  std::size_t recost_with(const std::vector<Whole>& whole_prices, const PlatePrices& prices,
                          std::size_t first, std::span<std::int64_t> costs) const {
    // Pointers of its own: what is written to might be anything for all the compiler knows.
    const Whole* const whole = whole_prices.data();
    const std::uint64_t* const shares = shares_.data();
    const std::uint32_t* const places = prices_.data();
    const std::uint64_t* const denominators = denominators_.data() + first;
    const std::size_t* const ends = ends_.data() + first + 1;
    const std::uint64_t parts = prices.parts_;
    const std::size_t last_line = lines() == 0 ? 0 : lines() - 1;
    const auto line = [=](std::size_t i) { return wide_product(shares[i], whole[places[i]]); };
    std::size_t in_fractions = 0;
    std::size_t i = ends_[first];
    for (std::size_t k = 0; k < costs.size(); ++k) {
      const std::size_t ahead = std::min(i + lines_ahead, last_line);
      __builtin_prefetch(shares + ahead);
      __builtin_prefetch(shares + std::min(ahead + 8, last_line));
      __builtin_prefetch(places + ahead);
      const std::size_t end = ends[k];
      // Two sums, so that one addition need not wait for the other.
      WideWhole even = 0;
      WideWhole odd = 0;
      for (; i + 4 <= end; i += 4) {
        even += line(i);
        odd += line(i + 1);
        even += line(i + 2);
        odd += line(i + 3);
      }
      for (; i < end; ++i) even += line(i);
      // Below 2^62 x 2^62 x 2 + 2^62 x 10^9.
      const WideWhole doubled = 2 * (even + odd) + wide_product(denominators[k], parts);
      // 0 for a plate that has no denominator: it never fits.
      const std::uint64_t twice = 2 * denominators[k];
      if (high_half(doubled) >= twice || (Marked && uses_marked(prices, first + k))) {
        costs[k] = rounded_exact(first + k, prices);
        ++in_fractions;
        continue;
      }
      std::uint64_t cost = narrow_quotient(doubled, twice);
      if (parts > 1) cost /= parts;
      if (cost >= most_cost) refuse(first + k, prices);
      costs[k] = static_cast<std::int64_t>(cost);
    }
    return in_fractions;
  }

  bool uses_marked(const PlatePrices& prices, std::size_t plate) const {
    for (std::size_t i = ends_[plate]; i < ends_[plate + 1]; ++i) {
      if (prices.whole_[prices_[i]] == PlatePrices::no_whole) return true;
    }
    return false;
  }

  std::int64_t rounded_exact(std::size_t plate, const PlatePrices& prices) const {
    const Integer cost = steps_of(exact_cost(plate, prices), 1, Rounding::half_up);
    if (cost >= most_cost) refuse(plate, prices);
    return cost.convert_to<std::int64_t>();
  }

  [[noreturn]] void refuse(std::size_t plate, const PlatePrices& prices) const {
    throw Failure(problems::number_too_long(as_exact(exact_cost(plate, prices))));
  }

  static constexpr std::uint64_t most_cost = 1'000'000'000'000'000'000;

  std::vector<std::uint64_t> shares_;        ///< of the line's price, over the plate's denominator
  std::vector<std::uint32_t> prices_;        ///< the line's
  std::vector<std::uint64_t> denominators_;  ///< the plate's; 0 for one that has none
  std::vector<std::size_t> ends_ = {0};      ///< behind the last line of each plate
  std::map<std::size_t, std::vector<PriceShare>> wide_;
  std::size_t prices_needed_ = 0;
};

/// What all plates of a table cost.
struct RecostedPlates {
  std::vector<std::int64_t> costs;  ///< in minor units, half up
  std::size_t in_fractions = 0;     ///< how many had to be costed in fractions of any size
};

/// Throws as `PlateTable::recost` does.
RecostedPlates recost(const PlateTable& plates, const PlatePrices& prices);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/plate_table.hpp"
#endif
