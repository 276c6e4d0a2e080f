// SPDX-License-Identifier: MIT
#pragma once
// All the problems of one run, in the order they were met.

#include <cstddef>
#include <type_traits>
#include <utility>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/only_counted.hpp"

namespace platewright {

/// Collects problems so that one run reports all of them and not the first alone. What is wrong in
/// the same words on several lines of a file is one problem, which counts its lines. Holds at most
/// `limit` problems: a broken file must not print a million lines. An error takes the place of a
/// warning where the list is full.
class ProblemList {
 public:
  explicit ProblemList(std::size_t limit = 200) : limit_(limit) {}

  void add(Problem problem);

  /// Adds those of another list, and counts what that one left out.
  void add_all(const ProblemList& others);

  /// Runs `work`; if it fails, keeps the problem at `place` and returns false. Where the list is
  /// full, and behind two thousand errors, that problem is `OnlyCounted`: one slip may stand on
  /// each of a hundred thousand lines.
  template <class Work>
  bool attempt(const Place& place, Work&& work) {
    return attempt([&] { return place; }, std::forward<Work>(work));
  }
  /// The same where `place` is a function that gives it, and is asked only if the work fails.
  template <class Where, class Work>
  requires std::is_invocable_r_v<Place, Where>
  bool attempt(Where&& place, Work&& work) {
    constexpr std::size_t most_with_suggestions = 2000;
    const OnlyCounted counted(is_full() || errors_met_ >= most_with_suggestions);
    try {
      std::forward<Work>(work)();
      return true;
    } catch (const Failure& failure) {
      add(at(failure.problem(), place()));
      return false;
    }
  }

  /// Whether an error that is added now would only be counted. Whoever has many more to look for
  /// may then count it by `leave_out`, without working out what to say of it.
  bool is_full() const { return problems_.size() >= limit_ && warnings_ == 0; }
  void leave_out();

  /// True where an error was met, also one that was left out.
  bool has_errors() const { return has_errors_; }

  const std::vector<Problem>& all() const& { return problems_; }
  const std::vector<Problem>& all() && = delete;
  /// How many problems came after the list was full.
  std::size_t left_out() const { return left_out_; }

 private:
  static void add_lines(Problem& known, const Problem& problem);

  /// Makes room for an error, which must not be hidden by warnings that came before it.
  bool drop_last_warning();

  std::size_t limit_;
  std::size_t left_out_ = 0;
  bool has_errors_ = false;
  std::size_t errors_met_ = 0;  ///< those of the same words too
  std::size_t warnings_ = 0;    ///< of those that are held
  std::vector<Problem> problems_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/problem_list.hpp"
#endif
