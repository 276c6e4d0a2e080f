// SPDX-License-Identifier: MIT
#pragma once
// Drawings as SVG inside the page. Nothing in them is told by colour alone, and all that they show
// is also said in words.

#include "card/html/html.hpp"
#include "platewright/card/drawing.hpp"

namespace platewright::detail {

/// A length in a drawing, to a hundredth.
std::string as_length(const Rational& length);

/// How far along the axis, as a share of it.
Rational share_along(const Axis& axis, const Rational& at);

/// Takes the place of the table that says the same, as a table of drawn lanes.
void draw_lanes(Html& html, const Lanes& lanes);

/// Stands below the table whose figures it draws; `title` names it.
void draw_plot(Html& html, const Plot& plot, const std::string& title);

}  // namespace platewright::detail
