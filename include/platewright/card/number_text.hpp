#pragma once
// How the figures of a sheet are written: money, shares, temperatures, durations. Each rounds here,
// at the edge, and half up unless it says otherwise.

#include <cstddef>
#include <string>

#include "platewright/number/write.hpp"
#include "platewright/quantity/temperature.hpp"

namespace platewright {

/// A decimal with its thousands parted by commas from ten thousand on: `1234.50`, `12,345.00`.
inline std::string with_thousands(std::string decimal) {
  const std::size_t first = !decimal.empty() && decimal.front() == '-' ? 1 : 0;
  const std::size_t point = decimal.find('.');
  std::size_t place = point == std::string::npos ? decimal.size() : point;
  if (place - first < 5) return decimal;
  while (place > first + 3) {
    place -= 3;
    decimal.insert(place, 1, ',');
  }
  return decimal;
}

/// An amount of money to the minor unit of its currency (`minor_digits` is 2 for USD, 0 for JPY),
/// without the name of the currency.
inline std::string money_text(const Rational& amount, unsigned minor_digits = 2) {
  return with_thousands(as_decimal(amount, minor_digits));
}

/// A share as per cent: 5/8 is `62.5 %`. `places` is the most decimals; zeros at the end are not
/// written.
inline std::string percent_text(const Rational& share, unsigned places = 1) {
  return as_short_decimal(share * 100, places) + " %";
}

/// A share as per cent that always has its sign: `+4.2 %`, `-1.2 %`; `0 %` where it rounds to none.
inline std::string signed_percent_text(const Rational& share, unsigned places = 1) {
  const std::string text = percent_text(share, places);
  return share > 0 && text != "0 %" ? "+" + text : text;
}

/// Whole degrees on both scales, the cook's own first: `130 °F (54 °C)`.
inline std::string fahrenheit_text(const Temperature& temperature) {
  return as_decimal(temperature.in_fahrenheit(), 0) + " \u00B0F (" +
         as_decimal(temperature.in_celsius(), 0) + " \u00B0C)";
}

/// `54 °C (130 °F)`.
inline std::string celsius_text(const Temperature& temperature) {
  return as_decimal(temperature.in_celsius(), 0) + " \u00B0C (" +
         as_decimal(temperature.in_fahrenheit(), 0) + " \u00B0F)";
}

/// A time span rounded to whole minutes: `25 min`, `1 h 25 min`, `48 h`, from 72 hours on with
/// days: `3 d 1 h`; what is shorter than a minute in whole seconds: `45 s`. `minutes` may have a
/// fraction and must not be negative.
inline std::string duration_text(const Rational& minutes) {
  const Integer seconds = steps_of(minutes * 60, Rational(1), Rounding::half_up);
  if (seconds > 0 && seconds < 60) return seconds.str() + " s";
  const Integer whole = steps_of(minutes, Rational(1), Rounding::half_up);
  const Integer days = whole < 72 * 60 ? Integer(0) : Integer(whole / 1440);
  const Integer hours = whole / 60 - days * 24;
  std::string out;
  const auto append = [&](const Integer& number, const char* unit) {
    if (number == 0) return;
    out += (out.empty() ? "" : " ") + number.str() + unit;
  };
  append(days, " d");
  append(hours, " h");
  append(whole % 60, " min");
  return out.empty() ? "0 min" : out;
}

}  // namespace platewright
