// SPDX-License-Identifier: MIT
#pragma once
// A figure of a worked sheet: a share or a factor, a weight, money, or a price by weight. A sheet
// that shows its working calculates with whichever of them a step has.

#include <optional>
#include <variant>

#include "platewright/problem/body.hpp"
#include "platewright/quantity/quantity.hpp"

namespace platewright {

using Figure = std::variant<Rational, Mass, Money, PricePerMass>;

enum class Operation { add, subtract, multiply, divide };

/// `left` and `right` added, subtracted, multiplied or divided, exactly. Nothing where their
/// dimensions do not allow it or the divisor is 0.
std::optional<Figure> carry_out(Operation operation, const Figure& left, const Figure& right);

/// How many times `part` goes into `whole`; nothing where they are not of one kind or `part` is 0.
std::optional<Rational> ratio_of(const Figure& whole, const Figure& part);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/figure.hpp"
#endif
