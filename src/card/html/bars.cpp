// SPDX-License-Identifier: MIT
#include <algorithm>

#include "card/html/blocks.hpp"
#include "platewright/number/round.hpp"
#include "platewright/number/write.hpp"

namespace platewright::detail {
namespace {

/// A bar as long as its share of the longest, in a frame as long as that. Its value stands beside
/// it in words, so that nothing is lost on who does not see it.
void draw_bar(Html& html, const Rational& share, const Rational& longest) {
  Rational filled;
  if (longest > 0 && share > 0) filled = share / longest * 100;
  html.element("svg",
               {{"class", "bar"},
                {"viewBox", "0 0 100 10"},
                {"preserveAspectRatio", "none"},
                {"aria-hidden", "true"}},
               [&] {
                 html.empty("rect", {{"class", "rest"}, {"width", "100"}, {"height", "10"}});
                 html.empty(
                     "rect",
                     {{"class", "fill"}, {"width", as_short_decimal(filled, 2)}, {"height", "10"}});
               });
}

}  // namespace

void put_block(Html& html, const HtmlPlace& place, const Bars& bars) {
  Rational longest;
  bool shares = false;
  for (const Bar& bar : bars.bars) {
    longest = std::max(longest, bar.share);
    shares = shares || !bar.share_text.text.empty();
  }
  html.lines("section", {}, [&] {
    html.lines("table", {{"class", "bars short"}}, [&] {
      if (!bars.title.empty()) {
        html.line("caption", {}, [&] { put_heading(html, place, bars.title); });
      }
      html.lines("tbody", {}, [&] {
        for (const Bar& bar : bars.bars) {
          html.line("tr", {}, [&] {
            html.element("th", {{"scope", "row"}}, bar.label);
            html.element("td", {{"class", "drawn"}}, [&] { draw_bar(html, bar.share, longest); });
            html.element("td", {{"class", "figures"}}, [&] { put_cell(html, bar.value); });
            if (!shares) return;
            html.element("td", {{"class", "figures"}}, [&] { put_cell(html, bar.share_text); });
          });
        }
      });
    });
  });
}

}  // namespace platewright::detail
