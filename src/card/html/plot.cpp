// SPDX-License-Identifier: MIT
#include <algorithm>

#include "card/html/drawings.hpp"
#include "platewright/card/display.hpp"
#include "platewright/number/write.hpp"

namespace platewright::detail {

std::string as_length(const Rational& length) {
  return as_short_decimal(length, 2);
}

Rational share_along(const Axis& axis, const Rational& at) {
  if (axis.to <= axis.from) return Rational(0);
  return (at - axis.from) / (axis.to - axis.from);
}

namespace {

/// The page of a plot: its height, and what is kept free for the words above, below and beside it.
constexpr int plot_width = 640;
constexpr int plot_height = 320;
constexpr int above = 34;
constexpr int below = 48;
constexpr int beside = 40;

/// No letter of the drawing's own size is wider.
constexpr int letter_width = 9;

/// Curves are told apart by how they are broken.
std::string dashes(std::size_t number) {
  constexpr const char* patterns[] = {"", "9 5", "2 4", "12 4 2 4"};
  return patterns[number % 4];
}

class PlotDrawing {
 public:
  PlotDrawing(Html& html, const Plot& plot) : html_(html), plot_(plot) {
    for (const Tick& tick : plot.up.ticks) {
      const auto label = static_cast<int>(display_width(tick.label)) * letter_width + 14;
      left_ = std::max(left_, label);
    }
  }

  void draw() {
    html_.element("text", {{"class", "begins"}, {"x", "0"}, {"y", "14"}}, plot_.up.label);
    html_.element("text",
                  {{"class", "ends"},
                   {"x", std::to_string(plot_width - beside)},
                   {"y", std::to_string(plot_height - 6)}},
                  plot_.across.label);
    for (const Tick& tick : plot_.up.ticks) draw_up(tick);
    for (const Tick& tick : plot_.across.ticks) draw_across(tick);
    for (std::size_t i = 0; i < plot_.curves.size(); ++i) draw_curve(plot_.curves[i], dashes(i));
  }

 private:
  std::string x_of(const Rational& at) const {
    return as_length(left_ + share_along(plot_.across, at) * (plot_width - left_ - beside));
  }
  std::string y_of(const Rational& at) const {
    return as_length(plot_height - below -
                     share_along(plot_.up, at) * (plot_height - above - below));
  }

  void rule(const std::string& x1, const std::string& y1, const std::string& x2,
            const std::string& y2) {
    html_.empty("line", {{"x1", x1}, {"y1", y1}, {"x2", x2}, {"y2", y2}});
  }

  void draw_up(const Tick& tick) {
    const std::string y = y_of(tick.at);
    rule(std::to_string(left_), y, std::to_string(plot_width - beside), y);
    html_.element("text",
                  {{"class", "ends"}, {"x", std::to_string(left_ - 8)}, {"y", y}, {"dy", "5"}},
                  tick.label);
  }

  void draw_across(const Tick& tick) {
    const std::string x = x_of(tick.at);
    rule(x, std::to_string(above), x, std::to_string(plot_height - below));
    html_.element("text", {{"x", x}, {"y", std::to_string(plot_height - below + 18)}}, tick.label);
  }

  void draw_curve(const Curve& curve, const std::string& pattern) {
    std::string points;
    for (const PlotPoint& point : curve.points) {
      points += (points.empty() ? "" : " ") + x_of(point.x) + "," + y_of(point.y);
    }
    html_.empty("polyline", {{"points", points}, {"stroke-dasharray", pattern}});
    for (const PlotPoint& point : curve.points) {
      html_.empty("circle", {{"cx", x_of(point.x)}, {"cy", y_of(point.y)}, {"r", "3.5"}});
    }
  }

  Html& html_;
  const Plot& plot_;
  int left_ = 0;
};

/// Which line is which, where there are several.
void put_curve_names(Html& html, const Plot& plot) {
  if (plot.curves.size() < 2) return;
  html.lines("ul", {{"class", "curves"}}, [&] {
    for (std::size_t i = 0; i < plot.curves.size(); ++i) {
      html.line("li", {}, [&] {
        html.element("svg", {{"viewBox", "0 0 48 10"}, {"aria-hidden", "true"}}, [&] {
          html.empty("polyline", {{"points", "0,5 48,5"}, {"stroke-dasharray", dashes(i)}});
        });
        html.text(" " + plot.curves[i].label);
      });
    }
  });
}

std::string said_of(const Plot& plot, const std::string& title) {
  std::string out = title.empty() ? "" : title + ": ";
  for (const Curve& curve : plot.curves) {
    out += curve.label + (&curve == &plot.curves.back() ? "" : ", ");
  }
  return out + " (" + plot.up.label + ") by " + plot.across.label +
         "; the figures are in the table above";
}

}  // namespace

void draw_plot(Html& html, const Plot& plot, const std::string& title) {
  html.lines("figure", {{"class", "plot"}}, [&] {
    html.line("svg",
              {{"viewBox", "0 0 " + std::to_string(plot_width) + " " + std::to_string(plot_height)},
               {"role", "img"},
               {"aria-label", said_of(plot, title)}},
              [&] { PlotDrawing(html, plot).draw(); });
    put_curve_names(html, plot);
  });
}

}  // namespace platewright::detail
