// SPDX-License-Identifier: MIT
#pragma once
// An amount as a line of a recipe has it.

#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/quantity/amount.hpp"

namespace platewright {

/// An amount written as a share of the weight of other lines: `salt: 6 % of water`, or `2 % of
/// water and meat`, which is another brine.
struct WeightShare {
  Rational share;
  /// Names of lines of the same recipe; `meat` stands for every line that is a cut.
  std::vector<std::string> of;

  friend bool operator==(const WeightShare&, const WeightShare&) = default;
};

/// An amount, a range or "to taste"; or a share of other lines. Never both.
class WrittenAmount {
 public:
  /// To taste.
  WrittenAmount() = default;
  WrittenAmount(LineAmount amount) : written_(std::move(amount)) {}
  WrittenAmount(const Amount& amount) : written_(LineAmount(amount)) {}
  WrittenAmount(WeightShare share) : written_(std::move(share)) {}
  template <Spoken Dimension>
  WrittenAmount(const Quantity<Dimension>& quantity) : written_(LineAmount(quantity)) {}

  /// Null where a share is written.
  const LineAmount* amount() const& { return std::get_if<LineAmount>(&written_); }
  const LineAmount* amount() && = delete;
  /// Null where an amount is written.
  const WeightShare* share() const& { return std::get_if<WeightShare>(&written_); }
  const WeightShare* share() && = delete;

  bool to_taste() const;

  friend bool operator==(const WrittenAmount&, const WrittenAmount&) = default;

 private:
  std::variant<LineAmount, WeightShare> written_;
};

/// The same line in a batch `factor` times as large; a share stays a share.
WrittenAmount scaled(const WrittenAmount& amount, const Rational& factor);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/written_amount.hpp"
#endif
