// SPDX-License-Identifier: MIT
#pragma once
// Pounds and ounces that were read, or written, as a decimal of a pound.

#include <optional>
#include <string>

#include "platewright/number/round.hpp"
#include "platewright/number/write.hpp"
#include "platewright/quantity/units.hpp"
#include "platewright/worksheet/figure.hpp"

namespace platewright::detail {

struct MisreadWeight {
  Figure weight;
  std::string what;
};

/// `15 lb 6 oz` as 15.6 lb, `15 lb 10 oz` as 15.10 lb. Nothing for whole pounds, less than a pound,
/// parts of an ounce and what is no weight.
inline std::optional<MisreadWeight> misread(const Figure& figure) {
  const auto* mass = std::get_if<Mass>(&figure);
  if (mass == nullptr) return std::nullopt;
  const Rational pounds(floor_of(mass->in(units::pound)));
  const Rational ounces = mass->in(units::ounce)-pounds * 16;
  if (pounds <= 0 || ounces == 0 || !is_whole(ounces)) return std::nullopt;
  const unsigned places = ounces < 10 ? 1 : 2;
  const Rational read = pounds + ounces / power_of_ten(places);
  return MisreadWeight{Mass::of(read, units::pound),
                       as_decimal(pounds, 0) + " lb " + as_decimal(ounces, 0) +
                           " oz was written as " + as_decimal(read, places) + " lb"};
}

}  // namespace platewright::detail
