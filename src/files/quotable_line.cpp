// SPDX-License-Identifier: MIT
#include "platewright/files/quotable_line.hpp"

#include <algorithm>
#include <array>
#include <filesystem>

#include "files/file_kind.hpp"
#include "platewright/problem/text.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright {
namespace {

/// Lists and logs have no key that says what they are; their names do.
bool is_table_name(const std::string& file) {
  constexpr std::array<std::string_view, 3> endings{".csv", ".tsv", ".txt"};
  const std::string ending = std::filesystem::path(file).extension().string();
  return std::find(endings.begin(), endings.end(), ending) != endings.end();
}

}  // namespace

std::string quotable_line(const Place& place) {
  if (place.line < 1) return {};
  ProblemList reported_already;
  const auto text = yaml::read_named(place.file, reported_already);
  if (!text) return {};
  if (!is_table_name(place.file) && !reading::says_its_kind(*text)) return {};
  std::string_view rest = *text;
  for (int line = 1; line < place.line; ++line) {
    const std::size_t end = rest.find('\n');
    if (end == std::string_view::npos) return {};
    rest.remove_prefix(end + 1);
  }
  rest = rest.substr(0, rest.find('\n'));
  if (!rest.empty() && rest.back() == '\r') rest.remove_suffix(1);
  const std::string escaped = in_quotes(rest, 100);
  return escaped.substr(1, escaped.size() - 2);
}

}  // namespace platewright
