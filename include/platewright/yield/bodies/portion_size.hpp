// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/portion_size.hpp.

#include "platewright/yield/portion_size.hpp"

namespace platewright {

PLATEWRIGHT_BODY Mass portion_at_plate(const PortionSize& size, const Ladder& ladder,
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

PLATEWRIGHT_BODY Mass slice_at(const Length& thickness, const SlicePortion& weighed) {
  const Length known = weighed.thickness.value_or(Length{});
  if (known <= Length{} || thickness <= Length{}) {
    throw Failure(problems::number_not_positive("a thickness", "0"));
  }
  return weighed.slice * (thickness / known);
}

namespace detail {

/// `2 slices of 3/4 in, 3 oz each`, after the number.
PLATEWRIGHT_BODY SlicePortion read_slices(const Rational& count, std::string_view rest,
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

PLATEWRIGHT_BODY PortionSize read_portion_size(std::string_view text, const UnitTable& units,
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
