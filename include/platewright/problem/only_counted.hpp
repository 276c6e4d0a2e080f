// SPDX-License-Identifier: MIT
#pragma once
// While a problem that is met would be counted and read by nobody.

#include "platewright/problem/body.hpp"

namespace platewright {

/// Says for as long as it lives, and for this thread, whether problems are made only to be counted.
/// Then none is worth a search for what may have been meant: to look for the name nearest to each
/// of a hundred thousand slips takes minutes. One inside another never takes that back.
class OnlyCounted {
 public:
  explicit OnlyCounted(bool here) : before_(said()) { said() = before_ || here; }
  OnlyCounted(const OnlyCounted&) = delete;
  OnlyCounted& operator=(const OnlyCounted&) = delete;
  ~OnlyCounted() { said() = before_; }

  /// Whether one that lives says so.
  static bool now() { return said(); }

 private:
  static bool& said();

  bool before_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/only_counted.hpp"
#endif
