// SPDX-License-Identifier: MIT
#include "yaml/sound_text.hpp"

#include <algorithm>

#include "platewright/problem/catalogue/files.hpp"

namespace platewright::yaml {
namespace {

Place place_of_byte(std::string_view text, std::size_t byte, const std::string& file) {
  const std::string_view before = text.substr(0, byte);
  const auto line = static_cast<int>(std::count(before.begin(), before.end(), '\n')) + 1;
  const std::size_t newline = before.rfind('\n');
  const std::size_t start = newline == std::string_view::npos ? 0 : newline + 1;
  return Place{file, line, static_cast<int>(byte - start) + 1, {}};
}

}  // namespace

bool check_sound(std::string_view text, const std::string& file, ProblemList& problems) {
  if (const auto byte = first_bad_byte(text)) {
    problems.add(at(problems::file_not_utf8(*byte, likely_encoding(text)),
                    place_of_byte(text, *byte, file)));
    return false;
  }
  if (const auto byte = first_control_character(text)) {
    problems.add(at(problems::file_has_control_character(*byte), place_of_byte(text, *byte, file)));
    return false;
  }
  return true;
}

}  // namespace platewright::yaml
