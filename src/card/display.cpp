// SPDX-License-Identifier: MIT
#include "platewright/card/display.hpp"

#include <utf8proc.h>

#include <algorithm>
#include <cstddef>

#include "platewright/problem/text.hpp"
#include "platewright/problem/utf8.hpp"

namespace platewright {

namespace {

/// Characters that are shown as one: a letter and its combining marks.
struct Cluster {
  std::string_view text;
  unsigned width = 0;
};

std::vector<Cluster> clusters(std::string_view text) {
  std::vector<Cluster> out;
  utf8proc_int32_t previous = 0;
  utf8proc_int32_t state = 0;
  std::size_t begin = 0;
  for (std::size_t i = 0; i < text.size();) {
    const Character character = character_at(text, i);
    const bool broken = character.length == 0;
    const auto code = static_cast<utf8proc_int32_t>(broken ? 0xFFFD : character.code);
    const std::size_t length = broken ? 1 : character.length;
    if (i == 0 || utf8proc_grapheme_break_stateful(previous, code, &state)) {
      begin = i;
      out.push_back({text.substr(begin, length), 0});
    }
    out.back().text = text.substr(begin, i + length - begin);
    out.back().width += static_cast<unsigned>(std::max(0, utf8proc_charwidth(code)));
    previous = code;
    i += length;
  }
  return out;
}

bool belongs_to_number(std::string_view word) {
  return word[0] == '%' || word.starts_with("\u00B0");
}

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> out;
  std::size_t i = 0;
  while (i < text.size()) {
    const std::size_t end = std::min(text.find(' ', i), text.size());
    if (end > i) {
      const std::string_view word = text.substr(i, end - i);
      if (!out.empty() && belongs_to_number(word)) {
        out.back() += " " + std::string(word);
      } else {
        out.emplace_back(word);
      }
    }
    i = end + 1;
  }
  return out;
}

}  // namespace

unsigned display_width(std::string_view text) {
  unsigned width = 0;
  for (const Cluster& cluster : clusters(text)) width += cluster.width;
  return width;
}

unsigned longest_word(std::string_view text) {
  unsigned longest = 0;
  for (const std::string& word : words_of(text)) longest = std::max(longest, display_width(word));
  return longest;
}

std::vector<std::string> wrapped(std::string_view text, unsigned width) {
  width = std::max(2U, width);
  std::vector<std::string> lines(1);
  unsigned used = 0;
  for (const std::string& word : words_of(text)) {
    const unsigned needed = display_width(word);
    if (!lines.back().empty() && used + 1 + needed <= width) {
      lines.back() += " " + word;
      used += 1 + needed;
      continue;
    }
    if (!lines.back().empty()) lines.emplace_back();
    used = 0;
    for (const Cluster& cluster : clusters(word)) {
      if (used + cluster.width > width && used > 0) {
        lines.emplace_back();
        used = 0;
      }
      lines.back() += cluster.text;
      used += cluster.width;
    }
  }
  return lines;
}

std::string on_one_line(std::string_view data) {
  std::string spaced(data);
  for (char& c : spaced) {
    if (c == '\n' || c == '\r' || c == '\t') c = ' ';
  }
  return escaped(spaced);
}

std::string padded_after(std::string text, unsigned width) {
  const unsigned used = display_width(text);
  if (used < width) text.append(width - used, ' ');
  return text;
}

std::string padded_before(std::string text, unsigned width) {
  const unsigned used = display_width(text);
  if (used < width) text.insert(0, width - used, ' ');
  return text;
}

std::string in_capitals(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const Character character = character_at(text, i);
    if (character.length == 0) {
      out += text[i++];
      continue;
    }
    utf8proc_uint8_t bytes[4];
    const auto capital = utf8proc_toupper(static_cast<utf8proc_int32_t>(character.code));
    const auto length = utf8proc_encode_char(capital, bytes);
    for (utf8proc_ssize_t k = 0; k < length; ++k) out += static_cast<char>(bytes[k]);
    i += character.length;
  }
  return out;
}

}  // namespace platewright
