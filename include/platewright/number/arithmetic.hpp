// SPDX-License-Identifier: MIT
#pragma once
// Which numbers a quantity is computed in.

#include "platewright/number/rational.hpp"

namespace platewright {

/// Exact fractions: the default everywhere.
struct Exact {
  using Number = Rational;
  static Number from(const Ratio& ratio) { return to_rational(ratio); }
};

/// Plain `double`, for whoever has to be fast and can live with a relative error of about 1e-15 a
/// step. Nothing in the program itself uses it.
struct Approximate {
  using Number = double;
  static constexpr Number from(const Ratio& ratio) {
    return static_cast<double>(ratio.numerator) / static_cast<double>(ratio.denominator);
  }
};

}  // namespace platewright
