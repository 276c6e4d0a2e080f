// SPDX-License-Identifier: MIT
#pragma once
// A rung's spread, source and losses in words.

#include <string>

#include "platewright/card/number_text.hpp"
#include "platewright/yield/rung.hpp"

namespace platewright::card {

/// `n 35, SD 2.8 points, 71.8 to 83.5 %`, as far as it is known.
inline std::string spread_text(const Spread& spread) {
  std::string out;
  if (spread.samples) out += "n " + std::to_string(*spread.samples);
  if (spread.standard_deviation) {
    out += (out.empty() ? "" : ", ") + std::string("SD ") +
           as_short_decimal(*spread.standard_deviation * 100, 2) + " points";
  }
  if (spread.low && spread.high) {
    out += (out.empty() ? "" : ", ") + as_short_decimal(*spread.low * 100, 1) + " to " +
           as_short_decimal(*spread.high * 100, 1) + " %";
  }
  return out;
}

inline std::string source_text(const Rung& rung) {
  std::string out = rung.source.text;
  if (!rung.source.row.empty()) out += ": " + rung.source.row;
  return rung.own ? out + " (own test)" : out;
}

inline std::string losses_text(const Rung& rung) {
  std::string out;
  for (const Loss loss : rung.holds) out += (out.empty() ? "" : ", ") + std::string(name_of(loss));
  return out;
}

}  // namespace platewright::card
