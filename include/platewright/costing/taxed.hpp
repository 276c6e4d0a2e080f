// SPDX-License-Identifier: MIT
#pragma once
// Rates of tax, and at which of them a sum is taxed.

#include <concepts>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "platewright/number/rational.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// One rate, by its name on the bill; without a name where it is the only one.
struct TaxRate {
  std::string name;
  Rational share;
};

/// The rates of a quote, at least one; no tax is a rate of 0.
class TaxRates {
 public:
  TaxRates() : rates_{TaxRate{}} {}
  /// The only rate.
  TaxRates(Rational share) : rates_{TaxRate{{}, std::move(share)}} {}
  /// Of none, one of 0.
  explicit TaxRates(std::vector<TaxRate> rates);

  const std::vector<TaxRate>& all() const { return rates_; }
  std::size_t size() const { return rates_.size(); }
  const TaxRate& operator[](std::size_t position) const { return rates_.at(position); }

 private:
  std::vector<TaxRate> rates_;
};

/// The part of a sum that is taxed at one rate.
struct TaxedPart {
  std::size_t rate = 0;  ///< its position among the rates of the quote
  Rational share = 1;    ///< of the sum
};

/// Which parts of a sum are taxed at which rates; what is left of it is not taxed.
class Taxed {
 public:
  /// At the first rate, or not at all.
  template <std::same_as<bool> Answer>
  Taxed(Answer yes)
      : parts_(yes ? std::vector<TaxedPart>{TaxedPart{}} : std::vector<TaxedPart>{}) {}
  explicit Taxed(std::vector<TaxedPart> parts) : parts_(std::move(parts)) {}

  const std::vector<TaxedPart>& parts() const { return parts_; }
  explicit operator bool() const { return !parts_.empty(); }

 private:
  std::vector<TaxedPart> parts_;
};

/// The share of a sum that is left of it where its taxes are in it: 1 for each part that is not
/// taxed, 1 / (1 + rate) for one that is.
Rational without_tax(const Taxed& taxed, const TaxRates& rates);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/taxed.hpp"
#endif
