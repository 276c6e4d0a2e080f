// SPDX-License-Identifier: MIT
#include "cli/terminal.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <string_view>
#include <utility>

namespace platewright::cli {
namespace {

constexpr unsigned least_columns = 40;  // a page has no fewer

constexpr std::string_view red = "\x1b[1;31m";
constexpr std::string_view yellow = "\x1b[1;33m";
constexpr std::string_view as_before = "\x1b[0m";

std::string_view environment(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? std::string_view() : std::string_view(value);
}

std::optional<unsigned> number_above_none(std::string_view text) {
  unsigned number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  const bool whole = error == std::errc() && end == text.data() + text.size();
  return whole && number > 0 ? std::optional(number) : std::nullopt;
}

std::string coloured(std::string_view text, std::string_view colour) {
  return std::string(colour) + std::string(text) + std::string(as_before);
}

/// Every `words` of the text in this colour.
void colour_all(std::string& text, std::string_view words, std::string_view colour) {
  const std::string shown = coloured(words, colour);
  for (std::size_t at = text.find(words); at != std::string::npos;
       at = text.find(words, at + shown.size())) {
    text.replace(at, words.size(), shown);
  }
}

}  // namespace

std::optional<unsigned> terminal_columns() {
  if (::isatty(STDOUT_FILENO) == 0) return std::nullopt;
  if (const auto said = number_above_none(environment("COLUMNS"))) return said;
  winsize size{};
  if (::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) != 0 || size.ws_col == 0) return std::nullopt;
  return size.ws_col;
}

unsigned columns_for(unsigned usual) {
  const auto columns = terminal_columns();
  return columns ? std::clamp(*columns, least_columns, usual + usual / 4) : usual;
}

bool may_be_coloured(int descriptor) {
  return ::isatty(descriptor) != 0 && environment("NO_COLOR").empty() &&
         environment("TERM") != "dumb";
}

std::string with_dangers_coloured(const std::string& text) {
  std::string out = text;
  for (const std::string_view words : {"NOT SAFE", "BELOW THE MINIMUM", "WARNING"}) {
    colour_all(out, words, red);
  }
  return out;
}

std::string with_message_coloured(const std::string& text) {
  for (const auto& [word, colour] : {std::pair(std::string_view("problem "), red),
                                     std::pair(std::string_view("warning "), yellow)}) {
    if (text.compare(0, word.size(), word) == 0) {
      return coloured(text.substr(0, word.size() - 1), colour) + text.substr(word.size() - 1);
    }
  }
  return text;
}

}  // namespace platewright::cli
