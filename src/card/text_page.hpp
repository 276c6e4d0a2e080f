// SPDX-License-Identifier: MIT
#pragma once
// A page of text while it is being filled, line by line.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/card/writers.hpp"

namespace platewright::detail {

/// What rules, frames and bars are drawn with.
struct Signs {
  std::string_view double_rule, heavy_rule, light_rule;
  std::string_view top_left, top_right, bottom_left, bottom_right, side;
  std::string_view bar, rest_of_bar;
};

/// A line, and how it may be parted from its neighbours at the end of a page.
struct PageLine {
  std::string text;
  /// The next line must stand on the same page.
  bool keep_with_next = false;
  /// Which of the page's running headings is repeated where this line begins a page; 0 for none.
  std::size_t running_heading = 0;
};

std::string repeated(std::string_view sign, unsigned times);

/// `text` with spaces that no line is broken at; they are printed as plain ones.
std::string held_together(std::string_view text);

class TextPage {
 public:
  explicit TextPage(const TextOptions& options);

  unsigned width() const { return width_; }
  const Signs& signs() const { return signs_; }
  bool large() const { return large_; }

  /// Data as it is printed: control characters escaped, line ends turned into spaces.
  std::string prepared(std::string_view data) const;
  /// `[2]`, or nothing for 0.
  static std::string marker(unsigned footnote);
  /// The text of a cell with its footnote's marker.
  std::string prepared(const Cell& cell) const;

  void line(const std::string& text, bool keep_with_next = false);
  /// One empty line, unless there is one already or nothing stands above it.
  void gap();
  /// Prepared text, wrapped, the lines after the first further in by `hanging`.
  void text(std::string_view prepared_text, unsigned hanging = 0, bool keep_with_next = false);
  /// The heading of a block, under a gap and over a rule; nothing for an empty title.
  void heading(const std::string& title);

  /// The lines from here on stand under `heading`; an empty one ends that.
  void begin_running_heading(std::vector<std::string> heading);

  /// The finished text: one long page, or pages with a foot.
  std::string finished(const std::string& title) const;

 private:
  std::string in_pages(const std::string& title) const;

  unsigned width_;
  bool ascii_;
  bool large_;
  unsigned lines_per_page_;
  const Signs& signs_;
  std::vector<PageLine> lines_;
  std::vector<std::vector<std::string>> running_headings_{{}};
  std::size_t running_heading_ = 0;
};

}  // namespace platewright::detail
