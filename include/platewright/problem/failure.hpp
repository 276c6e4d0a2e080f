// SPDX-License-Identifier: MIT
#pragma once
// The exception that carries a problem out of a computation.

#include <exception>
#include <string>
#include <utility>

#include "platewright/problem/problem.hpp"

namespace platewright {

/// Thrown by every function of the library that can't give the answer it was asked for. Whoever
/// knows the place in the book (the reader) catches it, adds the place and goes on reading.
class Failure : public std::exception {
 public:
  explicit Failure(Problem problem)
      : problem_(std::move(problem)),
        what_(problem_.id + ": " + problem_.found + "; expected " + problem_.expected) {}

  const Problem& problem() const noexcept { return problem_; }
  const char* what() const noexcept override { return what_.c_str(); }

 private:
  Problem problem_;
  std::string what_;
};

}  // namespace platewright
