// SPDX-License-Identifier: MIT
#include "files/file_kind.hpp"

#include <vector>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/nearest.hpp"
#include "yaml/sound_text.hpp"

namespace platewright::reading {
namespace {

std::vector<std::string> names_of_kinds() {
  std::vector<std::string> out;
  for (const FileKind kind : book_kinds) out.emplace_back(name_of(kind));
  for (const FileKind kind : single_kinds) out.emplace_back(name_of(kind));
  return out;
}

bool is_kind(std::string_view key) {
  const auto has_the_name = [&](FileKind kind) { return name_of(kind) == key; };
  return std::any_of(std::begin(book_kinds), std::end(book_kinds), has_the_name) ||
         std::any_of(std::begin(single_kinds), std::end(single_kinds), has_the_name);
}

/// Whether `holds` of any line; the text may be one of millions of them.
template <class Holds>
bool any_line(std::string_view text, Holds&& holds) {
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  while (!text.empty()) {
    const std::string_view line = text.substr(0, text.find('\n'));
    if (holds(line)) return true;
    text.remove_prefix(std::min(line.size() + 1, text.size()));
  }
  return false;
}

/// What stands before the colon of a line, out of quotation marks and of a brace or dash in front;
/// empty for a line that stands further in, which is one of a map inside, unless the whole stands
/// in braces.
std::string_view key_of_line(std::string_view line, bool in_braces) {
  if (line.empty() || (!in_braces && (line[0] == ' ' || line[0] == '\t'))) return {};
  const std::size_t begin = line.find_first_not_of("-{\"' \t");
  const std::size_t colon = line.find(':');
  if (begin == std::string_view::npos || colon == std::string_view::npos || colon <= begin)
    return {};
  const std::string_view key = line.substr(begin, colon - begin);
  return key.substr(0, key.find_last_not_of("\"' \t") + 1);
}

bool in_braces(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  return first != std::string_view::npos && text[first] == '{';
}

bool says_something_in(std::string_view line) {
  const std::size_t begin = line.find_first_not_of(" \t\r");
  return begin != std::string_view::npos && line[begin] != '#' && !line.starts_with("---");
}

}  // namespace

bool says_its_kind(std::string_view text) {
  const bool braces = in_braces(text);
  return any_line(text, [&](std::string_view line) { return is_kind(key_of_line(line, braces)); });
}

bool may_be_ours(const std::string& text, const std::string& file, ProblemList& problems) {
  if (says_its_kind(text) || !yaml::is_sound(text)) return true;
  if (!any_line(text, says_something_in)) return true;
  const std::vector<std::string> kinds = names_of_kinds();
  const bool braces = in_braces(text);
  std::string near;
  std::string meant;
  int lines = 0;
  any_line(text, [&](std::string_view line) {
    constexpr std::size_t longest_slip = 20;
    constexpr int most_lines = 50;  // what a file is stands near its beginning
    const std::string_view key = key_of_line(line, braces);
    if (key.empty() || key.size() > longest_slip) return ++lines == most_lines;
    const auto names = nearest_names(key, kinds);
    if (!names.empty()) {
      near = key;
      meant = names.front();
    }
    return !near.empty() || ++lines == most_lines;
  });
  problems.add(at(problems::not_a_book(near, meant), Place{file, 1, 1, {}}));
  return false;
}

}  // namespace platewright::reading
