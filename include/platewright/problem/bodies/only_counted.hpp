// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/only_counted.hpp.

#include "platewright/problem/only_counted.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool& OnlyCounted::said() {
  static thread_local bool is_said = false;
  return is_said;
}

}  // namespace platewright
