// SPDX-License-Identifier: MIT
#pragma once
// How the figures of a sheet are written: money, shares, temperatures, durations. Each rounds here,
// at the edge, and half up unless it says otherwise.

#include <cstddef>
#include <optional>
#include <string>

#include "platewright/number/write.hpp"
#include "platewright/quantity/currency.hpp"
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

/// An amount of money to the minor unit of its currency, without the currency's name.
inline std::string money_text(const Rational& amount, const Currency& currency) {
  return with_thousands(as_decimal(amount, currency.minor_digits()));
}

/// The places that say a value exactly, `least` or as many as two more; nothing where these do not:
/// of at least two they are 2 for 2.4, 3 for 2.385, and none for 1/3.
inline std::optional<unsigned> exact_places(const Rational& value, unsigned least) {
  for (unsigned places = least; places <= least + 2; ++places) {
    if (is_whole(value * power_of_ten(places))) return places;
  }
  return std::nullopt;
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

/// Whole degrees on both scales, the cook's own first: `130 °F (55 °C)`. Both are rounded as is
/// named: up for what must be reached, down for what must not be passed or for what was reached.
inline std::string fahrenheit_text(const Temperature& temperature, Rounding rounding) {
  return as_decimal(temperature.in_fahrenheit(), 0, rounding) + " \u00B0F (" +
         as_decimal(temperature.in_celsius(), 0, rounding) + " \u00B0C)";
}

/// `55 °C (130 °F)`, likewise.
inline std::string celsius_text(const Temperature& temperature, Rounding rounding) {
  return as_decimal(temperature.in_celsius(), 0, rounding) + " \u00B0C (" +
         as_decimal(temperature.in_fahrenheit(), 0, rounding) + " \u00B0F)";
}

/// A time span in whole seconds under ten minutes and in whole minutes from there on, rounded as is
/// named: up for what is held or waited for, down for what must not be exceeded. `25 min`, `2 min
/// 14 s`, `45 s`, `1 h 25 min`, `48 h`, from 72 hours on with days: `3 d 1 h`. `minutes` may have a
/// fraction and must not be negative.
inline std::string duration_text(const Rational& minutes, Rounding rounding) {
  std::string out;
  const auto append = [&](const Integer& number, const char* unit) {
    if (number == 0) return;
    out += (out.empty() ? "" : " ") + number.str() + unit;
  };
  if (minutes < 10) {
    const Integer seconds = steps_of(minutes * 60, Rational(1), rounding);
    append(seconds / 60, " min");
    append(seconds % 60, " s");
    return out.empty() ? "0 min" : out;
  }
  const Integer whole = steps_of(minutes, Rational(1), rounding);
  const Integer days = whole < 72 * 60 ? Integer(0) : Integer(whole / 1440);
  append(days, " d");
  append(whole / 60 - days * 24, " h");
  append(whole % 60, " min");
  return out;
}

}  // namespace platewright
