// SPDX-License-Identifier: MIT
#pragma once
// How the time of a step grows with what is made.

#include "platewright/number/rational.hpp"

namespace platewright {

/// What a time is written for: each of the pieces, of the batches, of the vessels or portions.
enum class GrowsBy { piece, batch, vessel, portion };

/// `per leg`, `per 4 legs`, `per batch by 2 people`.
struct TimeGrowth {
  GrowsBy by = GrowsBy::batch;
  Rational each = 1;    ///< so many of them are done at once
  Rational people = 1;  ///< who share the work

  friend bool operator==(const TimeGrowth&, const TimeGrowth&) = default;
};

}  // namespace platewright
