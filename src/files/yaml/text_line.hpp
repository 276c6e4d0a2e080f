// SPDX-License-Identifier: MIT
#pragma once
// One line of a file as a cook sees it: how far in it begins, its dash, its key and its value.

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/text.hpp"

namespace platewright::yaml {

/// Parts of a line, all of them views of it. Where there is no colon the whole is the value.
struct TextLine {
  std::string_view text;   ///< without its end
  std::size_t indent = 0;  ///< spaces and tabs before anything else
  bool dash = false;       ///< an item of a list
  std::string_view key;    ///< before the first colon; without one empty, where it would begin
  std::string_view value;  ///< behind it, without spaces around it
  bool colon = false;      ///< whether there is a key

  bool blank() const { return key.empty() && value.empty() && !dash; }
  /// Where a part of it stands, counted from 1.
  int column_of(std::string_view part) const {
    return static_cast<int>(part.data() - text.data()) + 1;
  }
};

inline bool is_quote(char c) {
  return c == '"' || c == '\'';
}

/// The position behind the closing mark of the quotation that opens at `at`, or `npos`.
inline std::size_t behind_quotation(std::string_view text, std::size_t at) {
  const char mark = text[at];
  for (std::size_t i = at + 1; i < text.size(); ++i) {
    if (mark == '"' && text[i] == '\\') {
      ++i;
    } else if (text[i] == mark) {
      if (mark == '\'' && i + 1 < text.size() && text[i + 1] == '\'') {
        ++i;
      } else {
        return i + 1;
      }
    }
  }
  return std::string_view::npos;
}

/// The colon that ends a key: one before a space or at the end, outside of quotation marks.
inline std::size_t key_colon(std::string_view text) {
  std::size_t i = 0;
  if (!text.empty() && is_quote(text.front())) i = behind_quotation(text, 0);
  for (; i < text.size(); ++i) {
    if (text[i] == ':' && (i + 1 == text.size() || text[i + 1] == ' ')) return i;
  }
  return std::string_view::npos;
}

inline TextLine text_line(std::string_view text) {
  TextLine out;
  if (!text.empty() && text.back() == '\r') text.remove_suffix(1);
  out.text = text;
  out.indent = std::min(text.find_first_not_of(" \t"), text.size());
  std::string_view rest = text.substr(out.indent);
  while (rest.substr(0, 2) == "- " || rest == "-") {
    out.dash = true;
    rest = rest.substr(1);
    rest.remove_prefix(std::min(rest.find_first_not_of(' '), rest.size()));
  }
  if (!rest.empty() && rest.front() == '#') rest = rest.substr(0, 0);
  const std::size_t colon = rest.empty() || rest.front() == '{' || rest.front() == '['
                                ? std::string_view::npos
                                : key_colon(rest);
  out.colon = colon != std::string_view::npos;
  out.key = trimmed_spaces(rest.substr(0, out.colon ? colon : 0));
  out.value = trimmed_spaces(out.colon ? rest.substr(colon + 1) : rest);
  return out;
}

inline std::vector<TextLine> text_lines(std::string_view text) {
  std::vector<TextLine> out;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    out.push_back(text_line(text.substr(0, end)));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return out;
}

/// What to type, between backticks, short enough to read.
inline std::string typed(std::string_view text) {
  std::string out = in_quotes(text, 100);
  out.front() = out.back() = '`';
  return out;
}

}  // namespace platewright::yaml
