// SPDX-License-Identifier: MIT
#pragma once
// What is drawn on a sheet: figures along axes, with the words that stand at them.

#include <string>
#include <variant>
#include <vector>

#include "platewright/number/rational.hpp"

namespace platewright {

/// A mark on an axis with what is written at it.
struct Tick {
  Rational at;
  std::string label;

  friend bool operator==(const Tick&, const Tick&) = default;
};

/// What is counted along an axis, with its unit, from `from` to `to`, which is more. The ticks rise
/// and lie between the two.
struct Axis {
  std::string label;
  Rational from;
  Rational to;
  std::vector<Tick> ticks;

  friend bool operator==(const Axis&, const Axis&) = default;
};

/// A time in which something is taken, on the axis of its `Lanes`.
struct Stretch {
  Rational from;
  Rational to;
  std::string sign;  ///< one letter, which the legend explains
  std::string said;  ///< the same in words: `A 14:15 to 17:45`

  friend bool operator==(const Stretch&, const Stretch&) = default;
};

/// One oven or one person. The stretches rise and do not overlap; a second lane of the same oven
/// has no label.
struct Lane {
  std::string label;
  std::vector<Stretch> stretches;

  friend bool operator==(const Lane&, const Lane&) = default;
};

struct LaneGroup {
  std::string title;
  std::vector<Lane> lanes;

  friend bool operator==(const LaneGroup&, const LaneGroup&) = default;
};

/// What goes on at one time, one line below the other.
struct Lanes {
  Axis axis;
  std::vector<LaneGroup> groups;
  std::vector<std::string> legend;

  friend bool operator==(const Lanes&, const Lanes&) = default;
};

struct PlotPoint {
  Rational x;
  Rational y;

  friend bool operator==(const PlotPoint&, const PlotPoint&) = default;
};

/// Points in the order of their `x`. What lies between two is not known, and drawn straight.
struct Curve {
  std::string label;
  std::vector<PlotPoint> points;

  friend bool operator==(const Curve&, const Curve&) = default;
};

/// Curves over one axis. All points lie inside the two.
struct Plot {
  Axis across;
  Axis up;
  std::vector<Curve> curves;

  friend bool operator==(const Plot&, const Plot&) = default;
};

using Drawing = std::variant<Lanes, Plot>;

}  // namespace platewright
