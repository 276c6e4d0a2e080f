// SPDX-License-Identifier: MIT
#pragma once
// Texts side by side.

#include <string>
#include <vector>

#include "card/text_page.hpp"

namespace platewright::detail {

/// A column of the page: words stand at its left edge, figures at its right.
struct Band {
  ColumnKind kind = ColumnKind::words;
  unsigned width = 0;
};

/// Prints `texts` (prepared, one for each band) side by side, wrapped in their bands, the lines of
/// one row always on one page.
void print_bands(TextPage& page, const std::vector<Band>& bands,
                 const std::vector<std::string>& texts, unsigned between, unsigned margin,
                 bool keep_with_next = false);

/// The same as lines, for whoever has another use for them.
std::vector<std::string> lines_of_bands(const std::vector<Band>& bands,
                                        const std::vector<std::string>& texts, unsigned between,
                                        unsigned margin);

}  // namespace platewright::detail
