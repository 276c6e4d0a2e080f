// SPDX-License-Identifier: MIT
#pragma once
// Catch2, whichever of its two versions the system has, and how it prints an exact number.

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
#else
#include <catch2/catch.hpp>
#endif

#include <string>

#include "platewright/number/rational.hpp"

namespace Catch {
template <>
struct StringMaker<platewright::Rational> {
  static std::string convert(const platewright::Rational& value) {
    return numerator_of(value).str() + "/" + denominator_of(value).str();
  }
};
}  // namespace Catch
