// SPDX-License-Identifier: MIT
#pragma once
// The one type for everything that can be wrong with what a user wrote.

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/place.hpp"

namespace platewright {

/// A warning is reported and the work goes on; an error stops it.
enum class Severity { error, warning };

/// What went wrong, where, what was expected, and what to do about it. Made only by the named
/// functions of `problem/catalogue/`; every `id` is stable and has its entry in PROBLEMS.md.
struct Problem {
  std::string id;
  Severity severity = Severity::error;
  Place place;
  std::string found;
  std::string expected;
  std::string remedy;
  /// Further lines of the same file where the very same is wrong.
  std::vector<int> again = {};

  friend bool operator==(const Problem&, const Problem&) = default;
};

/// The common shape behind every function of the catalogue.
inline Problem make_problem(std::string_view id, std::string found, std::string expected,
                            std::string remedy) {
  return Problem{std::string(id),     Severity::error,   Place{}, std::move(found),
                 std::move(expected), std::move(remedy), {}};
}

/// Whether two problems of one file say that the same is wrong, wherever they stand in it.
inline bool find_the_same(const Problem& left, const Problem& right) {
  return left.id == right.id && left.severity == right.severity &&
         left.place.file == right.place.file && left.found == right.found &&
         left.expected == right.expected;
}

/// Whether they say the same in all words: one name that is wrong on many lines is one problem.
inline bool say_the_same(const Problem& left, const Problem& right) {
  return find_the_same(left, right) && left.remedy == right.remedy;
}

/// The same problem as a warning.
inline Problem as_warning(Problem problem) {
  problem.severity = Severity::warning;
  return problem;
}

/// The same problem at a place, unless it already has one nearer to its cause.
inline Problem at(Problem problem, const Place& place) {
  if (problem.place.line == 0) {
    const std::string path = problem.place.path;
    problem.place = place;
    if (!path.empty()) problem.place = inside(problem.place, path);
  }
  return problem;
}

}  // namespace platewright
