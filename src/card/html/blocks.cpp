// SPDX-License-Identifier: MIT
#include "card/html/blocks.hpp"

#include <algorithm>

namespace platewright::detail {

void put_heading(Html& html, const HtmlPlace& place, const std::string& title) {
  if (title.empty()) return;
  html.element(place.in_part ? Literal("h3") : Literal("h2"), {}, title);
}

void put_cell(Html& html, const Cell& cell) {
  html.text(cell.text);
  if (cell.footnote == 0) return;
  const std::string number = std::to_string(cell.footnote);
  html.element("sup", {}, [&] {
    html.element("a", {{"href", "#source-" + number}}, "[" + number + "]");
  });
}

void put_block(Html& html, const HtmlPlace& place, const Facts& facts) {
  const bool all_figures =
      facts.kind == ColumnKind::figures &&
      std::all_of(facts.facts.begin(), facts.facts.end(),
                  [](const Fact& fact) { return fact.value.exact.has_value(); });
  html.lines("section", {}, [&] {
    html.lines("table", {{"class", "facts short"}}, [&] {
      if (!facts.title.empty()) {
        html.line("caption", {}, [&] { put_heading(html, place, facts.title); });
      }
      html.lines("tbody", {}, [&] {
        for (const Fact& fact : facts.facts) {
          html.line("tr", {}, [&] {
            html.element("th", {{"scope", "row"}}, fact.label);
            html.element("td", {{"class", all_figures ? "figures" : ""}},
                         [&] { put_cell(html, fact.value); });
          });
        }
      });
    });
  });
}

void put_block(Html& html, const HtmlPlace& place, const Paragraphs& paragraphs) {
  html.lines("section", {{"class", "text"}}, [&] {
    if (!paragraphs.title.empty()) {
      put_heading(html, place, paragraphs.title);
      html.line_end();
    }
    for (const std::string& text : paragraphs.texts) {
      html.line("p", {}, text);
    }
  });
}

void put_block(Html& html, const HtmlPlace& place, const Box& box) {
  html.lines("section", {{"class", place.labels ? "label" : "box"}}, [&] {
    if (!box.title.empty()) {
      put_heading(html, place, box.title);
      html.line_end();
    }
    for (const std::string& line : box.lines) {
      html.line("p", {}, line);
    }
  });
}

void put_block(Html& html, const HtmlPlace& /*place*/, const Signatures& signatures) {
  html.lines("section", {{"class", "signatures"}}, [&] {
    for (const std::string& label : signatures.labels) {
      html.line("p", {}, label);
    }
  });
}

}  // namespace platewright::detail
