// SPDX-License-Identifier: MIT
#pragma once
// The exception that carries a problem out of a computation.

#include <exception>
#include <string>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"

namespace platewright {

/// Thrown by every function of the library that can't give the answer it was asked for. Whoever
/// knows the place in the book (the reader) catches it, adds the place and goes on reading.
class Failure : public std::exception {
 public:
  explicit Failure(Problem problem);

  const Problem& problem() const noexcept { return problem_; }
  const char* what() const noexcept override { return what_.c_str(); }

 private:
  Problem problem_;
  std::string what_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/failure.hpp"
#endif
