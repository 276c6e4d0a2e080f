// SPDX-License-Identifier: MIT
#pragma once
// Each block of a sheet as HTML.

#include "card/html/html.hpp"
#include "platewright/card/blocks.hpp"

namespace platewright::detail {

/// Where in the page a block stands.
struct HtmlPlace {
  /// The blocks of a part have smaller headings than the part.
  bool in_part = false;
  /// Boxes are labels to be cut out.
  bool labels = false;
  /// Letters that a row has room for on paper.
  unsigned room = 88;
};

/// The title as the heading of a block; nothing where it is empty.
void put_heading(Html& html, const HtmlPlace& place, const std::string& title);

/// The text of a cell, with a link to its source.
void put_cell(Html& html, const Cell& cell);

void put_block(Html& html, const HtmlPlace& place, const Facts& facts);
void put_block(Html& html, const HtmlPlace& place, const Table& table);
void put_block(Html& html, const HtmlPlace& place, const Picture& picture);
void put_block(Html& html, const HtmlPlace& place, const Paragraphs& paragraphs);
void put_block(Html& html, const HtmlPlace& place, const Steps& steps);
void put_block(Html& html, const HtmlPlace& place, const Box& box);
void put_block(Html& html, const HtmlPlace& place, const Bars& bars);
void put_block(Html& html, const HtmlPlace& place, const Signatures& signatures);

}  // namespace platewright::detail
