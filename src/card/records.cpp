// SPDX-License-Identifier: MIT
#include "card/records.hpp"

#include <algorithm>

#include "platewright/problem/text.hpp"

namespace platewright::detail {

namespace {

/// Without the signs in front that a spreadsheet passes over: spaces of every width, line ends, and
/// what nobody sees.
std::string_view without_blanks_in_front(std::string_view words) {
  while (!words.empty()) {
    const Character first = character_at(words, 0);
    const char32_t code = first.code;
    const bool space = code == 0x20 || code == 0xA0 || code == 0x1680 ||
                       (code >= 0x2000 && code <= 0x200A) || code == 0x202F || code == 0x205F ||
                       code == 0x3000;
    if (first.length == 0 || !(space || is_control(code) || is_default_ignorable(code))) break;
    words.remove_prefix(first.length);
  }
  return words;
}

bool begins_like_a_formula(std::string_view words) {
  // The wide forms of the signs work in spreadsheets as the plain ones do.
  constexpr std::string_view signs[] = {"=", "+", "-", "@", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"};
  return std::any_of(std::begin(signs), std::end(signs),
                     [&](std::string_view sign) { return words.starts_with(sign); });
}

bool is_signed_number(std::string_view words) {
  return words.size() > 1 && (words[0] == '-' || words[0] == '+') && words[1] >= '0' &&
         words[1] <= '9' && words.substr(1).find_first_not_of("0123456789.,/ ") == words.npos;
}

/// True for two or three short numbers with `/` or `-` between them, which a spreadsheet makes a
/// day of: `1/2`, `2-3`, `1/2/3`. A day that is meant (`2027-10-09`) may become one.
bool is_like_a_day(std::string_view words) {
  std::size_t numbers = 0;
  std::size_t longest = 0;
  std::size_t digits = 0;
  for (std::size_t i = 0; i <= words.size(); ++i) {
    const bool ends = i == words.size() || words[i] == '/' || words[i] == '-';
    if (!ends && (words[i] < '0' || words[i] > '9')) return false;
    if (!ends) {
      ++digits;
      continue;
    }
    if (digits == 0) return false;
    longest = std::max(longest, digits);
    ++numbers;
    digits = 0;
  }
  const bool iso = numbers == 3 && words.size() == 10 && words[4] == '-' && words[7] == '-';
  return (numbers == 2 || numbers == 3) && longest <= 4 && !iso;
}

/// A line end inside a field is what RFC 4180 allows; every other control character is escaped.
std::string field(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    const bool carriage_return = end < text.size() && end > 0 && text[end - 1] == '\r';
    out += escaped(text.substr(0, carriage_return ? end - 1 : end));
    if (end < text.size()) out += '\n';
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  const bool spaced = !out.empty() && (out.front() == ' ' || out.back() == ' ');
  if (!spaced && out.find_first_of("\",\n") == std::string::npos) return out;
  for (std::size_t i = out.find('"'); i != std::string::npos; i = out.find('"', i + 2)) {
    out.insert(i, 1, '"');
  }
  return "\"" + out + "\"";
}

}  // namespace

std::string guarded(std::string_view words) {
  const std::string_view bare = without_blanks_in_front(words);
  const bool formula = begins_like_a_formula(bare) && !is_signed_number(bare);
  return (formula || is_like_a_day(bare) ? "'" : "") + std::string(words);
}

std::string written(const std::vector<Record>& records) {
  std::size_t longest = 0;
  for (const Record& record : records) longest = std::max(longest, record.size());
  std::string out;
  for (const Record& record : records) {
    for (std::size_t i = 0; i < longest; ++i) {
      if (i != 0) out += ',';
      if (i < record.size()) out += field(record[i]);
    }
    out += "\r\n";
  }
  return out;
}

}  // namespace platewright::detail
