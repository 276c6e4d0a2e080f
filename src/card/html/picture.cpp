// SPDX-License-Identifier: MIT
#include <variant>

#include "card/html/blocks.hpp"
#include "card/html/drawings.hpp"

namespace platewright::detail {
namespace {

void put_drawing(Html& html, const HtmlPlace& place, const Picture& picture, const Lanes& lanes) {
  html.lines("section", {}, [&] {
    html.lines("table", {{"class", "lanes short"}}, [&] {
      if (!picture.title.empty()) {
        html.line("caption", {}, [&] { put_heading(html, place, picture.title); });
      }
      draw_lanes(html, lanes);
    });
    for (const std::string& line : lanes.legend) html.line("p", {{"class", "note"}}, line);
  });
}

/// The figures of a curve are worth reading, so they stay above it.
void put_drawing(Html& html, const HtmlPlace& place, const Picture& picture, const Plot& plot) {
  put_block(html, place, static_cast<const Table&>(picture));
  draw_plot(html, plot, picture.title);
}

}  // namespace

void put_block(Html& html, const HtmlPlace& place, const Picture& picture) {
  std::visit([&](const auto& drawing) { put_drawing(html, place, picture, drawing); },
             picture.drawing);
}

}  // namespace platewright::detail
