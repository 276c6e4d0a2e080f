// SPDX-License-Identifier: MIT
#pragma once
// One value on a sheet: what is printed, and the exact number behind it.

#include <optional>
#include <string>
#include <utility>

#include "platewright/number/rational.hpp"

namespace platewright {

/// A value as it stands on a page. Words have a `text` alone. A figure also has its `exact` value,
/// the rounded number that is `shown` for it (without unit) and its `unit`; `text` is then what a
/// page prints, as a rule the two of them together. Every writer uses the same cell, so that no
/// format can disagree with another.
struct Cell {
  std::string text;
  std::string shown;
  std::string unit;
  std::optional<Rational> exact;
  /// Number of the sheet's footnote that this value comes from; 0 for none. See `cite`.
  unsigned footnote = 0;

  friend bool operator==(const Cell&, const Cell&) = default;
};

/// A cell of words.
inline Cell words(std::string text) {
  return Cell{std::move(text), {}, {}, std::nullopt, 0};
}

/// A figure that a page prints in its own way: `$12.50`, `1/2 cup + 3 tbsp`, `62.5 %`. `exact` is
/// in `unit`, as is `shown`.
inline Cell figure_as(std::string text, Rational exact, std::string shown, std::string unit = "") {
  return Cell{std::move(text), std::move(shown), std::move(unit), std::move(exact), 0};
}

/// A figure printed as its rounded number and its unit: `figure(fraction(25, 3), "8.33", "lb")` is
/// `8.33 lb`. `exact` is in `unit`.
inline Cell figure(Rational exact, const std::string& shown, const std::string& unit = "") {
  return figure_as(unit.empty() ? shown : shown + " " + unit, std::move(exact), shown, unit);
}

/// A figure whose unit the page does not repeat, because the heading of its column names it.
inline Cell bare_figure(Rational exact, const std::string& shown, std::string unit) {
  return figure_as(shown, std::move(exact), shown, std::move(unit));
}

/// The same cell with the number of its footnote.
inline Cell with_footnote(Cell cell, unsigned footnote) {
  cell.footnote = footnote;
  return cell;
}

}  // namespace platewright
