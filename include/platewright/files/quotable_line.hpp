// SPDX-License-Identifier: MIT
#pragma once
// The line that a problem stands on.

#include <string>

#include "platewright/problem/place.hpp"

namespace platewright {

/// The line of its file that a problem stands on, for the reader's eye, escaped and cut to 100
/// bytes. Empty where there is none, and for a file that is none of ours: a key that was named by
/// mistake is not shown around.
std::string quotable_line(const Place& place);

}  // namespace platewright
