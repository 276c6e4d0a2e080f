// SPDX-License-Identifier: MIT
#pragma once
// Temperatures. A temperature is not a step between temperatures: two types, exact offsets.

#include <compare>
#include <utility>

#include "platewright/number/rational.hpp"
#include "platewright/quantity/quantity.hpp"

namespace platewright {

namespace units {
/// The step of the Celsius scale, and of the Kelvin scale.
inline constexpr NamedUnit<TemperatureStepDimension> celsius_step{{1, 1}, "C"};
/// The step of the Fahrenheit scale: exactly 5/9 of a kelvin (NIST SP 811, appendix B.8).
inline constexpr NamedUnit<TemperatureStepDimension> fahrenheit_step{{5, 9}, "F"};
}  // namespace units

/// A temperature, held exactly in degrees Celsius. `t_F = t_C x 9/5 + 32` (NIST SP 811, B.8).
/// Two temperatures can be compared and their difference taken, but not added.
class Temperature {
 public:
  static Temperature celsius(const Rational& degrees) { return Temperature(degrees); }
  static Temperature fahrenheit(const Rational& degrees) {
    return Temperature((degrees - 32) * 5 / 9);
  }

  Rational in_celsius() const { return celsius_; }
  Rational in_fahrenheit() const { return celsius_ * 9 / 5 + 32; }

  friend TemperatureStep operator-(const Temperature& left, const Temperature& right) {
    return TemperatureStep::of(left.celsius_ - right.celsius_, units::celsius_step);
  }
  friend Temperature operator+(const Temperature& left, const TemperatureStep& right) {
    return Temperature(left.celsius_ + right.in(units::celsius_step));
  }
  friend Temperature operator-(const Temperature& left, const TemperatureStep& right) {
    return left + -right;
  }
  // Two temperatures do not add up to anything, and nothing but a step is added to one.
  friend Temperature operator+(const Temperature&, const Temperature&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, TemperatureStep>
  friend Temperature operator+(const Temperature&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, TemperatureStep>
  friend Temperature operator-(const Temperature&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Temperature>
  friend bool operator==(const Temperature&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Temperature>
  friend bool operator<(const Temperature&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Temperature>
  friend bool operator>(const Temperature&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Temperature>
  friend bool operator<=(const Temperature&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Temperature>
  friend bool operator>=(const Temperature&, const Other&) = delete;

  friend bool operator==(const Temperature& left, const Temperature& right) {
    return left.celsius_ == right.celsius_;
  }
  friend std::strong_ordering operator<=>(const Temperature& left, const Temperature& right) {
    if (left.celsius_ < right.celsius_) return std::strong_ordering::less;
    if (right.celsius_ < left.celsius_) return std::strong_ordering::greater;
    return std::strong_ordering::equal;
  }

 private:
  explicit Temperature(Rational celsius) : celsius_(std::move(celsius)) {}

  Rational celsius_;
};

}  // namespace platewright
