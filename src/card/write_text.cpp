// SPDX-License-Identifier: MIT
#include <cstddef>
#include <string>
#include <variant>

#include "card/text_bands.hpp"
#include "card/text_blocks.hpp"
#include "platewright/card/display.hpp"
#include "platewright/card/writers.hpp"

namespace platewright {

namespace {

using detail::TextPage;

/// The title, the date at the other edge of its line where there is room, and what stands below.
void print_head(TextPage& page, const Sheet& sheet) {
  const std::string title = page.prepared(page.large() ? in_capitals(sheet.title) : sheet.title);
  const std::string date = page.prepared(sheet.date);
  const unsigned title_width = display_width(title);
  const unsigned date_width = display_width(date);
  const bool side_by_side = !date.empty() && title_width + 2 + date_width <= page.width();
  if (side_by_side) {
    page.line(padded_after(title, page.width() - date_width) + date, true);
  } else {
    page.text(title, 0, true);
    if (!date.empty()) page.text(date, 0, true);
  }
  for (const std::string& subtitle : sheet.subtitles) page.text(page.prepared(subtitle), 0, true);
  page.line(detail::repeated(page.signs().double_rule, page.width()));
  page.gap();
}

void print_footnotes(TextPage& page, const Sheet& sheet) {
  if (sheet.footnotes.empty()) return;
  page.heading("Sources and remarks");
  const auto count = static_cast<unsigned>(sheet.footnotes.size());
  const unsigned number_width = display_width(TextPage::marker(count));
  unsigned number = 0;
  for (const std::string& footnote : sheet.footnotes) {
    detail::print_bands(
        page,
        {{ColumnKind::figures, number_width}, {ColumnKind::words, page.width() - number_width - 1}},
        {TextPage::marker(++number), page.prepared(footnote)}, 1, 0);
  }
}

}  // namespace

std::string write_text(const Sheet& sheet, const TextOptions& options) {
  TextPage page(options);
  print_head(page, sheet);
  for (const Block& block : sheet.blocks) {
    std::visit([&](const auto& one) { detail::print_block(page, one); }, block);
  }
  print_footnotes(page, sheet);
  return page.finished(sheet.title);
}

}  // namespace platewright
