// SPDX-License-Identifier: MIT
#pragma once
// What a kitchen cooks in and who works in it.

#include <optional>
#include <string>
#include <vector>

#include "platewright/kitchen/clock_hours.hpp"
#include "platewright/kitchen/pan_bottom.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/place.hpp"
#include "platewright/quantity/temperature.hpp"

namespace platewright {

/// Room for so many pans of one size: the racks of an oven, a hot box, a cold room.
struct PanSpace {
  Rational holds = 1;
  std::string pan;                  ///< `full-size hotel pan`
  std::optional<PanBottom> bottom;  ///< nothing where neither a table nor the cook says its size
};

/// How many pans stand where one of the space's own does: 1 for a pan of the same name, else by the
/// two bottoms; nothing where one of them is not known.
std::optional<Rational> pans_in_one_place(const std::string& pan,
                                          const std::optional<PanBottom>& bottom,
                                          const PanSpace& space);

struct Oven {
  std::string name;
  PanSpace racks = {};
  bool fan = false;
  /// From one rack to the next above it; nothing where not said.
  std::optional<Length> apart = {};
  std::optional<Temperature> lowest = {};
  std::optional<Temperature> highest = {};
  /// From one temperature to the next; common practice, no source.
  Duration change = Duration::of(15, units::minute);
  Place place = {};

  /// The racks that one pan's stack takes which stands so high: 1 where one of the two is not
  /// known.
  Rational racks_high(const std::optional<Length>& stands) const;
  bool reaches(const Temperature& at) const;
};

/// People of one role, who are there at the same hours.
struct Crew {
  std::string role;
  Rational workers = 1;
  ClockHours hours = {};
  Place place = {};
};

/// What is empty is not said, and nothing is held against it.
struct Workplace {
  std::vector<Oven> ovens = {};
  std::optional<Rational> hobs = {};
  std::optional<PanSpace> hot_box = {};
  std::optional<PanSpace> cold_room = {};
  std::vector<Crew> people = {};
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/workplace.hpp"
#endif
