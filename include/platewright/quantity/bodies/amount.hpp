// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/quantity/amount.hpp.

#include "platewright/quantity/amount.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool same_measure(const Unit& left, const Unit& right) {
  return left.dimension() == right.dimension() &&
         (left.dimension() != UnitDimension::pieces || left.kind() == right.kind());
}

PLATEWRIGHT_BODY Amount in_unit(const Amount& amount, const Unit& unit) {
  if (!same_measure(amount.unit, unit)) {
    throw Failure(problems::units_do_not_mix(amount_text(amount),
                                             dimension_name(amount.dimension()), unit.name(),
                                             dimension_name(unit.dimension())));
  }
  return Amount{amount.canonical() / unit.size(), unit};
}

PLATEWRIGHT_BODY Amount sum(const Amount& left, const Amount& right) {
  if (!same_measure(left.unit, right.unit)) {
    throw Failure(problems::units_do_not_mix(amount_text(left), dimension_name(left.dimension()),
                                             amount_text(right),
                                             dimension_name(right.dimension())));
  }
  return Amount{left.number + right.canonical() / left.unit.size(), left.unit};
}

PLATEWRIGHT_BODY void expect_dimension(const Amount& amount, UnitDimension wanted) {
  if (amount.dimension() != wanted) {
    throw Failure(problems::wrong_dimension(amount_text(amount), dimension_name(amount.dimension()),
                                            dimension_name(wanted)));
  }
}

PLATEWRIGHT_BODY Mass to_mass(const Amount& amount) {
  expect_dimension(amount, UnitDimension::mass);
  return Mass::of(amount.canonical(), units::gram);
}

PLATEWRIGHT_BODY Volume to_volume(const Amount& amount) {
  expect_dimension(amount, UnitDimension::volume);
  return Volume::of(amount.canonical(), units::millilitre);
}

PLATEWRIGHT_BODY Length to_length(const Amount& amount) {
  expect_dimension(amount, UnitDimension::length);
  return Length::of(amount.canonical(), units::centimetre);
}

PLATEWRIGHT_BODY Pieces to_pieces(const Amount& amount) {
  expect_dimension(amount, UnitDimension::pieces);
  return Pieces::of(amount.canonical(), units::each);
}

PLATEWRIGHT_BODY Duration to_duration(const Amount& amount) {
  expect_dimension(amount, UnitDimension::time);
  return Duration::of(amount.canonical(), units::second);
}

PLATEWRIGHT_BODY LineAmount LineAmount::range(const Amount& low, const Amount& high) {
  if (in_unit(high, low.unit).number <= low.number) {
    throw Failure(problems::amount_malformed(amount_text(low) + " to " + amount_text(high),
                                             "a range goes from less to more"));
  }
  LineAmount out(low);
  out.high_ = high;
  return out;
}

}  // namespace platewright
