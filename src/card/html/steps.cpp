// SPDX-License-Identifier: MIT
#include "card/html/blocks.hpp"

namespace platewright::detail {
namespace {

void put_step_line(Html& html, const StepLine& line, bool has_beside) {
  html.line("tr", {}, [&] {
    html.element("td", {{"class", "figures"}}, [&] { put_cell(html, line.amount); });
    if (has_beside) {
      html.element("td", {{"class", "figures"}}, [&] { put_cell(html, line.beside); });
    }
    html.element("th", {{"scope", "row"}, {"class", "words"}}, line.text);
  });
}

/// What a step uses, the amounts in line with each other.
void put_step_lines(Html& html, const std::vector<StepLine>& lines) {
  bool has_beside = false;
  for (const StepLine& line : lines) has_beside = has_beside || !line.beside.text.empty();
  html.lines("table", {{"class", "uses"}}, [&] {
    html.lines("tbody", {}, [&] {
      for (const StepLine& line : lines) put_step_line(html, line, has_beside);
    });
  });
}

}  // namespace

void put_block(Html& html, const HtmlPlace& place, const Steps& steps) {
  html.lines("section", {}, [&] {
    if (!steps.title.empty()) {
      put_heading(html, place, steps.title);
      html.line_end();
    }
    html.lines("ol", {{"class", "steps"}}, [&] {
      for (const Step& step : steps.steps) {
        html.lines("li", {}, [&] {
          html.line("p", {}, [&] {
            html.text(step.text);
            if (step.takes.text.empty()) return;
            html.text(" ");
            html.element("span", {{"class", "takes"}}, [&] {
              html.text("(");
              put_cell(html, step.takes);
              html.text(")");
            });
          });
          if (!step.lines.empty()) put_step_lines(html, step.lines);
        });
      }
    });
  });
}

}  // namespace platewright::detail
