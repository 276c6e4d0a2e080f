// SPDX-License-Identifier: MIT
#pragma once
// How a portion is served: by weight, by the slice, or by the rib.

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "platewright/problem/catalogue/worksheets.hpp"
#include "platewright/quantity/positive.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "platewright/yield/ladder.hpp"

namespace platewright {

/// So many slices, each of one weight; the thickness is for whoever sets the slicer.
struct SlicePortion {
  Rational slices = 1;
  Mass slice;
  std::optional<Length> thickness;
};

/// So many ribs of a piece that has `of`.
struct RibPortion {
  Rational ribs = 1;
  Rational of = 1;
};

using PortionSize = std::variant<Mass, SlicePortion, RibPortion>;

/// What a portion weighs at the plate. A portion by the rib is that share of what a piece of the
/// weight `piece` (as purchased) comes to at the end of the ladder, bones left on where the ladder
/// leaves them on. Throws Failure for 0 or less anywhere, for more ribs than the piece has, and for
/// ribs without the weight of a piece.
inline Mass portion_at_plate(const PortionSize& size, const Ladder& ladder,
                             const std::optional<Mass>& piece) {
  Mass out;
  if (const auto* mass = std::get_if<Mass>(&size)) {
    out = *mass;
  } else if (const auto* slices = std::get_if<SlicePortion>(&size)) {
    out = slices->slice * slices->slices;
  } else {
    const auto& ribs = std::get<RibPortion>(size);
    if (!piece) throw Failure(problems::ribs_without_piece());
    check_positive("a number of ribs", ribs.of);
    if (ribs.ribs > ribs.of) {
      throw Failure(problems::share_out_of_range(
          "ribs", as_exact(ribs.ribs), "at most the " + as_exact(ribs.of) + " that the piece has"));
    }
    out = ladder.down(*piece) * (ribs.ribs / ribs.of);
  }
  check_positive("a portion", out);
  return out;
}

/// The weight of a slice of one thickness, from a slice that was weighed: weight and thickness of
/// slices from one piece grow alike. Throws Failure for a thickness of 0 or less.
inline Mass slice_at(const Length& thickness, const SlicePortion& weighed) {
  const Length known = weighed.thickness.value_or(Length{});
  if (known <= Length{} || thickness <= Length{}) {
    throw Failure(problems::number_not_positive("a thickness", "0"));
  }
  return weighed.slice * (thickness / known);
}

namespace detail {

/// `2 slices of 3/4 in, 3 oz each`, after the number.
inline SlicePortion read_slices(const Rational& count, std::string_view rest,
                                std::string_view whole, const UnitTable& units,
                                MeasuringSystem system) {
  SlicePortion out{count, {}, {}};
  const std::size_t comma = rest.find(", ");
  std::string_view weight = rest;
  if (comma != std::string_view::npos) {
    const Amount thickness = read_amount(rest.substr(0, comma), units, system);
    if (thickness.dimension() != UnitDimension::length) {
      throw Failure(problems::portion_size_malformed(whole));
    }
    out.thickness = Length::of(thickness.canonical(), units::centimetre);
    weight = rest.substr(comma + 2);
  }
  constexpr std::string_view each = " each";
  if (weight.size() > each.size() && weight.substr(weight.size() - each.size()) == each) {
    weight.remove_suffix(each.size());
  }
  out.slice = to_mass(read_amount(weight, units, system));
  return out;
}

}  // namespace detail

/// Reads `6 oz`, `2 slices of 3 oz`, `2 slices of 3/4 in, 3 oz each` or `1 rib of 7`. Throws
/// Failure for anything else.
inline PortionSize read_portion_size(std::string_view text, const UnitTable& units,
                                     MeasuringSystem system) {
  for (const std::string_view word : {" slices of ", " slice of ", " ribs of ", " rib of "}) {
    const std::size_t found = text.find(word);
    if (found == std::string_view::npos) continue;
    const Rational count = read_number(trimmed_spaces(text.substr(0, found)));
    const std::string_view rest = trimmed_spaces(text.substr(found + word.size()));
    if (word.find("slice") != std::string_view::npos) {
      return detail::read_slices(count, rest, text, units, system);
    }
    return RibPortion{count, read_number(rest)};
  }
  return to_mass(read_amount(text, units, system));
}

}  // namespace platewright
