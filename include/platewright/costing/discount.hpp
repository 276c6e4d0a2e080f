// SPDX-License-Identifier: MIT
#pragma once
// What is taken off, what it is off, and why.

#include <optional>
#include <string>

#include "platewright/quantity/money.hpp"

namespace platewright {

/// A share or a sum that the client does not pay. It leaves the price of a guest as it is, and cuts
/// into what the caterer has of it.
struct Discount {
  std::string name;               ///< as it stands on the bill
  std::optional<Rational> share;  ///< of what it is off
  std::optional<Money> sum;       ///< where it is no share
  std::string of = {};  ///< an extra that is billed; empty where it is what the guests pay
};

/// A discount on a bill.
struct DiscountLine {
  Discount discount;
  Money base;    ///< what it is off, before any discount
  Money amount;  ///< a share rounded down to the minor unit; at most what is left of the base
};

}  // namespace platewright
