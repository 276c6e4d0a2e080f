// SPDX-License-Identifier: MIT
#pragma once
// The one type for everything that can be wrong with what a user wrote.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
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
Problem make_problem(std::string_view id, std::string found, std::string expected,
                     std::string remedy);

/// Whether two problems of one file say that the same is wrong, wherever they stand in it.
bool find_the_same(const Problem& left, const Problem& right);

/// Whether they say the same in all words: one name that is wrong on many lines is one problem.
inline bool say_the_same(const Problem& left, const Problem& right) {
  return find_the_same(left, right) && left.remedy == right.remedy;
}

/// The same problem as a warning.
Problem as_warning(Problem problem);

/// The same problem at a place, unless it already has one nearer to its cause.
Problem at(Problem problem, const Place& place);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/problem.hpp"
#endif
