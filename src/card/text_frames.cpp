// SPDX-License-Identifier: MIT
// What is drawn on a page of text: frames and lines to sign on.

#include <algorithm>
#include <cstddef>

#include "card/text_bands.hpp"
#include "card/text_blocks.hpp"
#include "platewright/card/display.hpp"

namespace platewright::detail {

void print_block(TextPage& page, const Box& box) {
  page.gap();
  const Signs& signs = page.signs();
  const unsigned inside = page.width() - 4;
  const auto across = [&](std::string_view left, std::string_view right) {
    return std::string(left) + repeated(signs.heavy_rule, page.width() - 2) + std::string(right);
  };
  const auto framed = [&](const std::string& text) {
    for (const std::string& line : wrapped(text, inside)) {
      page.line(std::string(signs.side) + " " + padded_after(line, inside) + " " +
                    std::string(signs.side),
                true);
    }
  };
  page.line(across(signs.top_left, signs.top_right), true);
  if (!box.title.empty()) {
    framed(page.prepared(box.title));
    if (!box.lines.empty()) framed("");
  }
  for (const std::string& line : box.lines) framed(page.prepared(line));
  page.line(across(signs.bottom_left, signs.bottom_right));
  page.gap();
}

void print_block(TextPage& page, const Signatures& signatures) {
  constexpr unsigned between = 4;
  const unsigned width = (page.width() - between) / 2;
  for (std::size_t i = 0; i < signatures.labels.size(); i += 2) {
    std::vector<Band> bands{{ColumnKind::words, width}};
    std::vector<std::string> rules{std::string(width, '_')};
    std::vector<std::string> labels{page.prepared(signatures.labels[i])};
    if (i + 1 < signatures.labels.size()) {
      bands.push_back(bands.front());
      rules.push_back(rules.front());
      labels.push_back(page.prepared(signatures.labels[i + 1]));
    }
    page.gap();
    // Room for a hand.
    for (int line = 0; line < 2; ++line) page.line("", true);
    print_bands(page, bands, rules, between, 0, true);
    print_bands(page, bands, labels, between, 0);
  }
}

}  // namespace platewright::detail
