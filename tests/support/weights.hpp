// SPDX-License-Identifier: MIT
#pragma once
// Weights, money and prices as the yield tests write them.

#include <cstdint>

#include "platewright/number/read.hpp"
#include "platewright/quantity/money.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright::test {

inline Mass pounds(std::int64_t whole, std::int64_t ounces = 0) {
  return Mass::of(whole, units::pound) + Mass::of(ounces, units::ounce);
}
inline Mass ounces(const Rational& count) {
  return Mass::of(count, units::ounce);
}
inline Mass grams(const Rational& count) {
  return Mass::of(count, units::gram);
}

/// A number as it is printed in a source: `5.50`.
inline Rational printed(const char* text) {
  return read_number(text);
}

inline Money money(const Rational& amount) {
  return Money::of(amount, units::currency_unit);
}
inline Money money(const char* amount) {
  return money(printed(amount));
}
inline PricePerMass per_pound(const char* amount) {
  return money(amount) / pounds(1);
}
inline PricePerMass per_kilogram(const char* amount) {
  return money(amount) / Mass::of(1, units::kilogram);
}

inline Rational amount_of(const Money& value) {
  return value.in(units::currency_unit);
}
/// What a price per mass comes to for a pound.
inline Rational for_a_pound(const PricePerMass& price) {
  return amount_of(price * pounds(1));
}
inline Rational for_a_kilogram(const PricePerMass& price) {
  return amount_of(price * Mass::of(1, units::kilogram));
}

}  // namespace platewright::test
