// SPDX-License-Identifier: MIT
#include "card/html/drawings.hpp"
#include "platewright/number/write.hpp"

namespace platewright::detail {
namespace {

/// A lane is `width` x `height`; the axis keeps away from its ends so that what is written at a
/// tick has room.
constexpr int width = 560;
constexpr int height = 22;
constexpr int margin = 22;

/// A letter of the drawing's own size is no wider.
constexpr int letter = 12;

std::string along(const Axis& axis, const Rational& at) {
  return as_length(margin + share_along(axis, at) * (width - 2 * margin));
}

Attributes canvas(const std::string& said) {
  Attributes out{{"class", "lane"},
                 {"viewBox", "0 0 " + std::to_string(width) + " " + std::to_string(height)}};
  if (said.empty()) {
    out.push_back({"aria-hidden", "true"});
  } else {
    out.push_back({"role", "img"});
    out.push_back({"aria-label", said});
  }
  return out;
}

void draw_hours(Html& html, const Axis& axis) {
  html.element("svg", canvas(""), [&] {
    for (const Tick& tick : axis.ticks) {
      html.element("text", {{"x", along(axis, tick.at)}, {"y", "15"}}, tick.label);
    }
  });
}

void draw_stretch(Html& html, const Axis& axis, const Stretch& one) {
  const Rational share = share_along(axis, one.to) - share_along(axis, one.from);
  const Rational length = share * (width - 2 * margin);
  html.empty("rect", {{"x", along(axis, one.from)},
                      {"y", "2"},
                      {"width", as_length(length)},
                      {"height", std::to_string(height - 4)}});
  // One that is too short for its letter is said in words alone, and in the tables below.
  if (length < letter) return;
  html.element("text", {{"x", along(axis, (one.from + one.to) / 2)}, {"y", "16"}}, one.sign);
}

void draw_lane(Html& html, const Axis& axis, const Lane& lane) {
  std::string said;
  for (const Stretch& one : lane.stretches) said += (said.empty() ? "" : ", ") + one.said;
  html.element("svg", canvas(said), [&] {
    for (const Tick& tick : axis.ticks) {
      const std::string x = along(axis, tick.at);
      html.empty("line", {{"x1", x}, {"x2", x}, {"y1", "0"}, {"y2", std::to_string(height)}});
    }
    for (const Stretch& one : lane.stretches) draw_stretch(html, axis, one);
  });
}

}  // namespace

void draw_lanes(Html& html, const Lanes& lanes) {
  html.lines("thead", {}, [&] {
    html.line("tr", {}, [&] {
      html.element("td", {}, "");
      html.element("td", {{"class", "drawn"}}, [&] { draw_hours(html, lanes.axis); });
    });
  });
  for (const LaneGroup& group : lanes.groups) {
    html.lines("tbody", {}, [&] {
      html.line("tr", {{"class", "group"}}, [&] {
        html.element("th", {{"scope", "rowgroup"}, {"colspan", "2"}}, group.title);
      });
      for (const Lane& lane : group.lanes) {
        html.line("tr", {}, [&] {
          if (lane.label.empty()) {
            html.element("td", {}, "");
          } else {
            html.element("th", {{"scope", "row"}}, lane.label);
          }
          html.element("td", {{"class", "drawn"}}, [&] { draw_lane(html, lanes.axis, lane); });
        });
      }
    });
  }
}

}  // namespace platewright::detail
