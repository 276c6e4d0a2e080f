// SPDX-License-Identifier: MIT
#include "yaml/read_yaml.hpp"

#include <algorithm>

#include "platewright/problem/catalogue/files.hpp"
#include "yaml/library_yaml.hpp"
#include "yaml/plain_yaml.hpp"
#include "yaml/sound_text.hpp"

namespace platewright::yaml {
namespace {

bool check_text(std::string_view text, const std::string& file, ProblemList& problems,
                const Bounds& bounds) {
  if (text.size() > bounds.bytes) {
    problems.add(at(problems::file_too_large(std::to_string(text.size()) + " bytes", bounds.bytes),
                    Place{file, 1, 1, {}}));
    return false;
  }
  const auto lines = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
  if (lines > bounds.lines) {
    problems.add(at(problems::file_too_large(std::to_string(lines) + " lines", bounds.lines),
                    Place{file, 1, 1, {}}));
    return false;
  }
  return check_sound(text, file, problems);
}

}  // namespace

std::optional<Node> read_yaml(std::string_view text, const std::string& file, ProblemList& problems,
                              const Bounds& bounds) {
  if (!check_text(text, file, problems, bounds)) return std::nullopt;
  if (auto plain = read_plain_yaml(text, bounds)) return plain;
  return read_library_yaml(text, file, problems, bounds);
}

}  // namespace platewright::yaml
