// SPDX-License-Identifier: MIT
#pragma once
// The lines of a plain text of YAML, one at a time.

#include <algorithm>
#include <cstddef>
#include <string_view>

namespace platewright::yaml {

/// Walks over the lines that hold something: neither blank ones nor those of a remark alone.
class PlainLines {
 public:
  /// Stands on the first one.
  explicit PlainLines(std::string_view text) : rest_(text) { next(); }

  /// False behind the last line.
  bool there() const { return there_; }
  int number() const { return number_; }
  /// How far in stands what is left of the line: an item counts from behind its dash.
  std::size_t indent() const { return indent_; }
  /// From there to the end of the line, without blanks at its end.
  std::string_view content() const { return content_; }
  /// How many bytes were walked over to come here, with those of the line itself.
  std::size_t walked() const { return walked_; }

  /// An item of a list: a dash, and something behind it.
  bool is_item() const { return content_.starts_with("- "); }
  /// Goes behind the dash.
  void into_item() {
    const std::size_t width = std::min(content_.find_first_not_of(' ', 1), content_.size());
    content_.remove_prefix(width);
    indent_ += width;
  }

  void next() {
    walked_ = 0;
    there_ = false;
    while (!there_ && !rest_.empty()) {
      const std::size_t size = std::min(rest_.find('\n'), rest_.size());
      const std::string_view line = rest_.substr(0, size);
      rest_.remove_prefix(std::min(size + 1, rest_.size()));
      ++number_;
      walked_ += size + 1;
      indent_ = line.find_first_not_of(' ');
      there_ = indent_ != std::string_view::npos && line[indent_] != '#';
      if (there_) {
        content_ = line.substr(indent_, line.find_last_not_of(' ') + 1 - indent_);
      }
    }
  }

 private:
  std::string_view rest_;
  std::string_view content_;
  std::size_t indent_ = 0;
  std::size_t walked_ = 0;
  int number_ = 0;
  bool there_ = false;
};

}  // namespace platewright::yaml
