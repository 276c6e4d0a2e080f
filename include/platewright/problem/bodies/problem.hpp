// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/problem.hpp.

#include <utility>

#include "platewright/problem/problem.hpp"

namespace platewright {

PLATEWRIGHT_BODY Problem make_problem(std::string_view id, std::string found, std::string expected,
                                      std::string remedy) {
  return Problem{std::string(id),     Severity::error,   Place{}, std::move(found),
                 std::move(expected), std::move(remedy), {}};
}

PLATEWRIGHT_BODY bool find_the_same(const Problem& left, const Problem& right) {
  return left.id == right.id && left.severity == right.severity &&
         left.place.file == right.place.file && left.found == right.found &&
         left.expected == right.expected;
}

PLATEWRIGHT_BODY Problem as_warning(Problem problem) {
  problem.severity = Severity::warning;
  return problem;
}

PLATEWRIGHT_BODY Problem at(Problem problem, const Place& place) {
  if (problem.place.line == 0) {
    const std::string path = problem.place.path;
    problem.place = place;
    if (!path.empty()) problem.place = inside(problem.place, path);
  }
  return problem;
}

}  // namespace platewright
