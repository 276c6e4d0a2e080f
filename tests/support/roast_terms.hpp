// SPDX-License-Identifier: MIT
#pragma once
// Roasts to be worked out.

#include <utility>

#include "platewright/heat/roast_question.hpp"

namespace platewright::test {

inline Mass pounds(const Rational& count) {
  return Mass::of(count, units::pound);
}
inline Duration minutes(const Rational& count) {
  return Duration::of(count, units::minute);
}
inline Temperature fahrenheit(const Rational& degrees) {
  return Temperature::fahrenheit(degrees);
}

/// From 40 F in one oven of `oven` F to `pull` F inside, 20 minutes of rest at 70 F.
inline RoastTerms roast_terms(RoastShape shape, int oven, int pull) {
  return {std::move(shape), OvenKind::still,  {{fahrenheit(oven), {}}},
          fahrenheit(40),   fahrenheit(pull), fahrenheit(70),
          minutes(20),      usual_meat()};
}

}  // namespace platewright::test
