// SPDX-License-Identifier: MIT
#include "card/text_bands.hpp"

#include <algorithm>
#include <cstddef>

#include "platewright/card/display.hpp"

namespace platewright::detail {

std::vector<std::string> lines_of_bands(const std::vector<Band>& bands,
                                        const std::vector<std::string>& texts, unsigned between,
                                        unsigned margin) {
  std::vector<std::vector<std::string>> columns;
  std::size_t height = 1;
  for (std::size_t i = 0; i < bands.size(); ++i) {
    columns.push_back(wrapped(texts[i], bands[i].width));
    height = std::max(height, columns.back().size());
  }
  std::vector<std::string> out;
  for (std::size_t row = 0; row < height; ++row) {
    std::string line(margin, ' ');
    for (std::size_t i = 0; i < bands.size(); ++i) {
      if (i != 0) line.append(between, ' ');
      const std::string text = row < columns[i].size() ? columns[i][row] : "";
      line += bands[i].kind == ColumnKind::figures ? padded_before(text, bands[i].width)
                                                   : padded_after(text, bands[i].width);
    }
    out.push_back(line);
  }
  return out;
}

void print_bands(TextPage& page, const std::vector<Band>& bands,
                 const std::vector<std::string>& texts, unsigned between, unsigned margin,
                 bool keep_with_next) {
  const std::vector<std::string> lines = lines_of_bands(bands, texts, between, margin);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    page.line(lines[i], keep_with_next || i + 1 < lines.size());
  }
}

}  // namespace platewright::detail
