// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/problem_list.hpp.

#include <algorithm>
#include <iterator>

#include "platewright/problem/problem_list.hpp"

namespace platewright {

PLATEWRIGHT_BODY void ProblemList::add(Problem problem) {
  const bool error = problem.severity == Severity::error;
  if (error) ++errors_met_;
  const auto same = std::find_if(problems_.begin(), problems_.end(), [&](const Problem& known) {
    return OnlyCounted::now() ? find_the_same(known, problem) : say_the_same(known, problem);
  });
  if (same != problems_.end()) return add_lines(*same, problem);
  has_errors_ = has_errors_ || error;
  if (problems_.size() >= limit_) {
    ++left_out_;
    if (!error || !drop_last_warning()) return;
  }
  if (!error) ++warnings_;
  problems_.push_back(std::move(problem));
}

PLATEWRIGHT_BODY void ProblemList::add_all(const ProblemList& others) {
  for (const Problem& problem : others.problems_) add(problem);
  has_errors_ = has_errors_ || others.has_errors_;
  left_out_ += others.left_out_;
}

PLATEWRIGHT_BODY void ProblemList::leave_out() {
  ++left_out_;
  has_errors_ = true;
}

PLATEWRIGHT_BODY void ProblemList::add_lines(Problem& known, const Problem& problem) {
  std::vector<int> lines = problem.again;
  lines.insert(lines.begin(), problem.place.line);
  for (const int line : lines) {
    // In order, so that a name wrong on every line of a long file is not looked for among all.
    const auto next = std::lower_bound(known.again.begin(), known.again.end(), line);
    const bool there = line == known.place.line || (next != known.again.end() && *next == line);
    if (!there) known.again.insert(next, line);
  }
}

PLATEWRIGHT_BODY bool ProblemList::drop_last_warning() {
  const auto is_warning = [](const Problem& problem) {
    return problem.severity == Severity::warning;
  };
  const auto last = std::find_if(problems_.rbegin(), problems_.rend(), is_warning);
  if (last == problems_.rend()) return false;
  problems_.erase(std::next(last).base());
  --warnings_;
  return true;
}

}  // namespace platewright
