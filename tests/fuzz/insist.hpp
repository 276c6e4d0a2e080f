// SPDX-License-Identifier: MIT
#pragma once
// What must hold whatever a target reads.

#include <cstdio>
#include <cstdlib>

namespace platewright::test {

/// Ends the program, which is what the fuzzer looks for, where it does not hold.
inline void insist(bool holds, const char* what) {
  if (holds) return;
  std::fprintf(stderr, "does not hold: %s\n", what);
  std::abort();
}

}  // namespace platewright::test
