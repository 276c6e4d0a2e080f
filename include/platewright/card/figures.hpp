// SPDX-License-Identifier: MIT
#pragma once
// Cells for the figures that most sheets have: the exact value, rounded once, in its usual writing.

#include "platewright/card/cell.hpp"
#include "platewright/card/number_text.hpp"

namespace platewright {

/// Money in units of its currency, rounded half up to the minor unit: `1234.50 USD`.
inline Cell money_cell(const Rational& amount, const Currency& currency) {
  return figure_as(money_text(amount, currency) + " " + currency.code(), amount,
                   as_decimal(amount, currency.minor_digits()), currency.code());
}

/// The same without the currency, which the heading of the column names.
inline Cell bare_money_cell(const Rational& amount, const Currency& currency) {
  return figure_as(money_text(amount, currency), amount,
                   as_decimal(amount, currency.minor_digits()), currency.code());
}

/// A share (5/8) as per cent (`62.5 %`); the exact value is in per cent too.
inline Cell percent_cell(const Rational& share, unsigned places = 1) {
  return figure(share * 100, as_short_decimal(share * 100, places), "%");
}

/// A number without unit, with at most `places` decimals.
inline Cell number_cell(const Rational& value, unsigned places) {
  return figure(value, as_short_decimal(value, places));
}

/// A temperature in whole degrees Fahrenheit, with Celsius beside it on the page.
inline Cell fahrenheit_cell(const Temperature& temperature, Rounding rounding) {
  return figure_as(fahrenheit_text(temperature, rounding), temperature.in_fahrenheit(),
                   as_decimal(temperature.in_fahrenheit(), 0, rounding), "F");
}

/// A temperature in whole degrees Celsius, with Fahrenheit beside it on the page.
inline Cell celsius_cell(const Temperature& temperature, Rounding rounding) {
  return figure_as(celsius_text(temperature, rounding), temperature.in_celsius(),
                   as_decimal(temperature.in_celsius(), 0, rounding), "C");
}

/// A time span, given in minutes; shown in hundredths of one under ten.
inline Cell duration_cell(const Rational& minutes, Rounding rounding) {
  return figure_as(duration_text(minutes, rounding), minutes,
                   as_short_decimal(minutes, minutes < 10 ? 2 : 0, rounding), "min");
}

}  // namespace platewright
