// SPDX-License-Identifier: MIT
#include <cstddef>
#include <string>
#include <type_traits>
#include <utility>
#include <variant>

#include "card/html/blocks.hpp"
#include "card/html/page_style.hpp"
#include "platewright/card/writers.hpp"

namespace platewright {

namespace {

using detail::Html;
using detail::HtmlPlace;

/// From how far a sheet is read: its class in the style, and how many letters fit a row of paper.
struct Reading {
  std::string of;
  unsigned room;
};

Reading reading_of(SheetKind kind) {
  switch (kind) {
    case SheetKind::card:
    case SheetKind::cards:
    case SheetKind::batches:
    case SheetKind::timeline:
    case SheetKind::day:
    case SheetKind::roast:
      return {" standing", 68};
    case SheetKind::buffet_cards:
      return {" guests", 60};
    case SheetKind::yield:
    case SheetKind::worksheet:
    case SheetKind::class_marks:
    case SheetKind::trials:
    case SheetKind::measure:
    case SheetKind::tables:
    case SheetKind::cost:
    case SheetKind::plate_costs:
    case SheetKind::event_cost:
    case SheetKind::why:
    case SheetKind::quote:
    case SheetKind::client_quote:
    case SheetKind::invoice:
    case SheetKind::guest_table:
    case SheetKind::movers:
    case SheetKind::budget:
    case SheetKind::margin_risk:
    case SheetKind::order:
    case SheetKind::delivery_notes:
    case SheetKind::labels:
    case SheetKind::check:
    case SheetKind::lethality:
      return {"", 88};
  }
  return {"", 88};
}

void put_head(Html& html, const Sheet& sheet) {
  html.lines("head", {}, [&] {
    html.empty("meta", {{"charset", "utf-8"}});
    html.line_end();
    html.empty("meta", {{"name", "viewport"}, {"content", "width=device-width, initial-scale=1"}});
    html.line_end();
    // Nothing is loaded and nothing runs, whatever a reader makes of the page.
    html.empty("meta", {{"http-equiv", "Content-Security-Policy"},
                        {"content", "default-src 'none'; style-src 'unsafe-inline'"}});
    html.line_end();
    html.line("title", {}, sheet.title);
    html.style(detail::page_style);
  });
}

void put_title(Html& html, const Sheet& sheet) {
  html.lines("header", {}, [&] {
    html.line("h1", {}, sheet.title);
    for (const std::string& subtitle : sheet.subtitles) {
      html.line("p", {}, subtitle);
    }
    if (sheet.date.empty()) return;
    html.line("p", {{"class", "date"}}, sheet.date);
  });
}

void put_sources(Html& html, const Sheet& sheet) {
  if (sheet.footnotes.empty()) return;
  html.lines("section", {{"class", "sources"}}, [&] {
    html.line("h2", {}, "Sources and remarks");
    html.lines("ol", {}, [&] {
      int number = 0;
      for (const std::string& footnote : sheet.footnotes) {
        html.line("li", {{"id", "source-" + std::to_string(++number)}}, footnote);
      }
    });
  });
}

void put_one(Html& html, const HtmlPlace& place, const Block& block) {
  std::visit(
      [&](const auto& one) {
        if constexpr (!std::is_same_v<std::decay_t<decltype(one)>, Part>) {
          put_block(html, place, one);
        }
      },
      block);
}

/// The labels from the one at `i` on, two beside each other, so that one cut parts rows of them.
void put_labels(Html& html, HtmlPlace place, const Sheet& sheet, std::size_t& i) {
  constexpr std::size_t in_a_row = 2;
  place.labels = true;
  const auto is_label = [&] {
    return i < sheet.blocks.size() && std::holds_alternative<Box>(sheet.blocks[i]);
  };
  html.lines("div", {{"class", "cut"}}, [&] {
    while (is_label()) {
      html.lines("div", {{"class", "cut-row"}}, [&] {
        for (std::size_t n = 0; n < in_a_row && is_label(); ++n) {
          put_one(html, place, sheet.blocks[i++]);
        }
      });
    }
  });
}

void put_until_a_part(Html& html, const HtmlPlace& place, const Sheet& sheet, std::size_t& i) {
  const bool labels = sheet.kind == SheetKind::labels || sheet.kind == SheetKind::buffet_cards;
  while (i < sheet.blocks.size() && !std::holds_alternative<Part>(sheet.blocks[i])) {
    if (labels && std::holds_alternative<Box>(sheet.blocks[i])) {
      put_labels(html, place, sheet, i);
    } else {
      put_one(html, place, sheet.blocks[i++]);
    }
  }
}

void put_body(Html& html, const Sheet& sheet, unsigned room) {
  put_title(html, sheet);
  std::size_t i = 0;
  put_until_a_part(html, {false, false, room}, sheet, i);
  while (i < sheet.blocks.size()) {
    const std::string title = std::get<Part>(sheet.blocks[i++]).title;
    html.lines("article", {{"class", "part"}}, [&] {
      html.line("h2", {}, title);
      put_until_a_part(html, {true, false, room}, sheet, i);
    });
  }
  put_sources(html, sheet);
}

}  // namespace

std::string write_html(const Sheet& sheet, const HtmlOptions& options) {
  Html html;
  html.declaration("<!DOCTYPE html>\n");
  html.lines("html", {{"lang", "en"}}, [&] {
    put_head(html, sheet);
    const Reading reading = options.large ? Reading{" large", 48} : reading_of(sheet.kind);
    html.lines("body", {{"class", "sheet-" + std::string(name_of(sheet.kind)) + reading.of}},
               [&] { html.lines("main", {}, [&] { put_body(html, sheet, reading.room); }); });
  });
  return std::move(html).finished();
}

}  // namespace platewright
