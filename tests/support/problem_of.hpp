// SPDX-License-Identifier: MIT
#pragma once
// The problem that a computation ends in.

#include <utility>

#include "platewright/problem/failure.hpp"

namespace platewright::test {

/// What `work` fails with; a problem without an id where it does not fail.
template <class Work>
Problem problem_of(Work&& work) {
  try {
    std::forward<Work>(work)();
  } catch (const Failure& failure) {
    return failure.problem();
  }
  return {};
}

}  // namespace platewright::test
