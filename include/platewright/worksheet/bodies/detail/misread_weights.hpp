// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/detail/misread_weights.hpp.

#include "platewright/worksheet/detail/misread_weights.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY std::optional<MisreadWeight> misread(const Figure& figure) {
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
