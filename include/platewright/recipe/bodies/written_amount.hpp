// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/written_amount.hpp.

#include "platewright/recipe/written_amount.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool WrittenAmount::to_taste() const {
  const LineAmount* own = amount();
  return own != nullptr && own->to_taste();
}

PLATEWRIGHT_BODY WrittenAmount scaled(const WrittenAmount& amount, const Rational& factor) {
  const LineAmount* own = amount.amount();
  return own == nullptr ? amount : WrittenAmount(scaled(*own, factor));
}

}  // namespace platewright
