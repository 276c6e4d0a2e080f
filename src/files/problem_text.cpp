// SPDX-License-Identifier: MIT
#include "platewright/files/problem_text.hpp"

#include <vector>

#include "platewright/files/quotable_line.hpp"

namespace platewright {
namespace {

/// Further lines of a text stand below its first one.
void append(std::string& out, const char* label, const std::string& text) {
  if (text.empty()) return;
  out += std::string("  ") + label;
  for (const char c : text) {
    out += c;
    if (c == '\n') out += std::string(10, ' ');
  }
  out += "\n";
}

/// The first dozen of the lines that are like the one shown.
std::string again_text(const std::vector<int>& lines) {
  if (lines.empty()) return {};
  constexpr std::size_t most = 12;
  std::string out = lines.size() == 1 ? "on line " : "on lines ";
  for (std::size_t i = 0; i < lines.size() && i < most; ++i) {
    out += (i == 0 ? "" : ", ") + std::to_string(lines[i]);
  }
  if (lines.size() > most) out += " and " + std::to_string(lines.size() - most) + " more";
  return out + ": " + std::to_string(lines.size() + 1) + " times in all";
}

}  // namespace

std::string problem_text(const ProblemList& problems,
                         const std::function<std::string(const std::string& head)>& shown) {
  std::string out;
  for (const Problem& problem : problems.all()) {
    if (!problem.place.file.empty()) {
      out += problem.place.file + ":" + std::to_string(problem.place.line) + ":" +
             std::to_string(problem.place.column) + ": ";
    }
    const std::string head =
        (problem.severity == Severity::error ? "problem " : "warning ") + problem.id + "\n";
    out += shown ? shown(head) : head;
    append(out, "        | ", quotable_line(problem.place));
    append(out, "in      ", problem.place.path);
    append(out, "found   ", problem.found);
    append(out, "again   ", again_text(problem.again));
    append(out, "wanted  ", problem.expected);
    append(out, "do      ", problem.remedy);
  }
  if (problems.left_out() > 0) {
    out += "and " + std::to_string(problems.left_out()) + " more\n";
  }
  return out;
}

}  // namespace platewright
