#pragma once
// All the problems of one run, in the order they were met.

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

#include "platewright/problem/failure.hpp"

namespace platewright {

/// Collects problems so that one run reports all of them and not the first alone. Holds at most
/// `limit` problems: a broken file must not print a million lines.
class ProblemList {
 public:
  explicit ProblemList(std::size_t limit = 200) : limit_(limit) {}

  void add(Problem problem) {
    if (std::find(problems_.begin(), problems_.end(), problem) != problems_.end()) return;
    if (problems_.size() < limit_) {
      problems_.push_back(std::move(problem));
    } else {
      ++left_out_;
    }
  }

  /// Runs `work`; if it fails, keeps the problem at `place` and returns false.
  template <class Work>
  bool attempt(const Place& place, Work&& work) {
    try {
      std::forward<Work>(work)();
      return true;
    } catch (const Failure& failure) {
      add(at(failure.problem(), place));
      return false;
    }
  }

  bool has_errors() const {
    return std::any_of(problems_.begin(), problems_.end(), [](const Problem& problem) {
      return problem.severity == Severity::error;
    });
  }

  const std::vector<Problem>& all() const { return problems_; }
  /// How many problems came after the list was full.
  std::size_t left_out() const { return left_out_; }

 private:
  std::size_t limit_;
  std::size_t left_out_ = 0;
  std::vector<Problem> problems_;
};

}  // namespace platewright
