// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/failure.hpp.

#include <utility>

#include "platewright/problem/failure.hpp"

namespace platewright {

PLATEWRIGHT_BODY Failure::Failure(Problem problem)
    : problem_(std::move(problem)),
      what_(problem_.id + ": " + problem_.found + "; expected " + problem_.expected) {}

}  // namespace platewright
