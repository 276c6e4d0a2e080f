// SPDX-License-Identifier: MIT
#pragma once
// Temperatures from text: `325 F`, `163 °C`, `130 degrees F`.

#include <string>
#include <string_view>

#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/quantities.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/temperature.hpp"

namespace platewright {

/// Reads one temperature. A minus sign is allowed here and nowhere else (freezers). Throws Failure
/// where the scale is missing or the number is malformed.
inline Temperature read_temperature(std::string_view text) {
  std::string_view rest = text;
  bool below_zero = false;
  if (!rest.empty() && rest.front() == '-') {
    below_zero = true;
    rest.remove_prefix(1);
  }
  const NumberPrefix prefix = read_number_prefix(rest);
  const Rational degrees = below_zero ? Rational(-prefix.value) : prefix.value;
  std::string scale;
  for (const char c : rest.substr(prefix.length)) {
    if (c != ' ' && c != '.') scale += c;
  }
  for (const std::string_view word : {"\u00B0", "degrees", "degree", "deg"}) {
    if (scale.substr(0, word.size()) == word) scale = scale.substr(word.size());
  }
  if (scale == "F" || scale == "f" || scale == "Fahrenheit")
    return Temperature::fahrenheit(degrees);
  if (scale == "C" || scale == "c" || scale == "Celsius") return Temperature::celsius(degrees);
  throw Failure(problems::temperature_malformed(text));
}

}  // namespace platewright
