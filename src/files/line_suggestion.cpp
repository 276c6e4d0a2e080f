// SPDX-License-Identifier: MIT
#include "files/line_suggestion.hpp"

namespace platewright::reading {
namespace {

/// What a cook puts between a name and its amount.
constexpr std::string_view between = " \t:=,-";

std::string line_of(std::string_view name, std::string_view amount) {
  // A comma or a colon in a name is no trouble in a line of its own; other signs may be.
  return "- " + escaped(trimmed_spaces(name)) + ": " + escaped(trimmed_spaces(amount));
}

std::string_view without_end(std::string_view text) {
  while (!text.empty() && between.find(text.back()) != std::string_view::npos)
    text.remove_suffix(1);
  return text;
}

bool is_amount(std::string_view text, const Reading& reading) {
  try {
    reading.line_amount(text);
    return true;
  } catch (const Failure&) {
    return false;
  }
}

/// `1 tbsp salt`: the longest beginning that is an amount.
std::string amount_first(std::string_view text, const Reading& reading) {
  for (std::size_t space = text.rfind(' '); space != std::string_view::npos && space > 0;
       space = text.rfind(' ', space - 1)) {
    if (is_amount(text.substr(0, space), reading)) {
      std::string_view name = trimmed_spaces(text.substr(space));
      if (name.substr(0, 3) == "of ") name = trimmed_spaces(name.substr(3));
      return line_of(name, text.substr(0, space));
    }
  }
  return {};
}

}  // namespace

std::string suggested_line(std::string_view text, const Reading& reading) {
  text = trimmed_spaces(text).substr(0, 80);
  const std::size_t digit = text.find_first_of("0123456789");
  if (digit == 0) {
    if (std::string line = amount_first(text, reading); !line.empty()) return line;
  } else if (digit != std::string_view::npos && !without_end(text.substr(0, digit)).empty()) {
    return line_of(without_end(text.substr(0, digit)), text.substr(digit));
  }
  const std::size_t taste = text.find("to taste");
  if (taste != std::string_view::npos && !without_end(text.substr(0, taste)).empty()) {
    return line_of(without_end(text.substr(0, taste)), "to taste");
  }
  return line_of(without_end(text), "2 oz") + "` with its own amount, or `" +
         line_of(without_end(text), "to taste");
}

std::string with_dashes(const yaml::Node& map) {
  if (map.entries.empty()) return "a dash before each line";
  const auto& [key, value] = map.entries.front();
  std::string name = key.text;
  // `-salt: 1 tbsp`: the dash is there, and no space behind it.
  const bool joined = !name.empty() && name.front() == '-';
  if (joined) name = std::string(trimmed_spaces(std::string_view(name).substr(1)));
  const std::string example =
      "- " + escaped(name) + ":" + (value.is_scalar() ? " " + escaped(value.text) : "");
  return (joined ? "write a space behind each dash, as in `"
                 : "write a dash before each, as in `") +
         example + "`";
}

}  // namespace platewright::reading
