// SPDX-License-Identifier: MIT
// A text parted into pages of equal length, each with its foot.

#include <algorithm>
#include <utility>

#include "card/text_page.hpp"
#include "platewright/card/display.hpp"

namespace platewright::detail {

namespace {

/// Where the page that begins at `begin` ends: after as many lines as there is `room` for, or
/// earlier where lines that belong together would be parted there and have room on the next page.
std::size_t end_of_page(const std::vector<PageLine>& lines, std::size_t begin, std::size_t room) {
  const std::size_t full = begin + room;
  if (full >= lines.size()) return lines.size();
  std::size_t first = full;
  while (first > begin && lines[first - 1].keep_with_next) --first;
  std::size_t last = full;
  while (last < lines.size() && lines[last].keep_with_next) ++last;
  return first == begin || last - first >= room ? full : first;
}

}  // namespace

std::string TextPage::in_pages(const std::string& title) const {
  constexpr std::size_t foot = 2;
  const std::size_t body = lines_per_page_ - foot;
  std::vector<std::vector<std::string>> pages;
  for (std::size_t begin = 0; begin < lines_.size();) {
    std::vector<std::string> page;
    const std::vector<std::string>& running = running_headings_[lines_[begin].running_heading];
    // Where a heading would fill the page, the lines below it would never come.
    if (running.size() <= body / 3) page = running;
    const std::size_t end = end_of_page(lines_, begin, body - page.size());
    for (std::size_t i = begin; i < end; ++i) page.push_back(lines_[i].text);
    begin = end;
    while (begin < lines_.size() && lines_[begin].text.empty()) ++begin;
    page.resize(body);
    pages.push_back(std::move(page));
  }
  std::string out;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (i != 0) out += "\f";
    for (const std::string& one : pages[i]) out += one + "\n";
    const std::string number =
        "page " + std::to_string(i + 1) + " of " + std::to_string(pages.size());
    const auto room = width_ - static_cast<unsigned>(number.size());
    out += "\n" + padded_after(wrapped(prepared(title), room - 2).front(), room) + number + "\n";
  }
  return out;
}

}  // namespace platewright::detail
