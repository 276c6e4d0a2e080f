// SPDX-License-Identifier: MIT
#pragma once
// Work on many files at once, on all cores of the machine.

#include <cstddef>
#include <functional>

namespace platewright::reading {

/// Calls `work` with each number below `count` once, several at a time where there are many and the
/// machine has several cores; returns when all are done. What one of them throws is thrown on, and
/// what has not begun by then is left out.
void in_parallel(std::size_t count, const std::function<void(std::size_t)>& work);

/// Whether so many are worth several threads.
bool are_many(std::size_t count);

/// For as long as it lives, so many threads are at work, however few there is to do: for tests.
class Threads {
 public:
  explicit Threads(std::size_t threads);
  Threads(const Threads&) = delete;
  Threads& operator=(const Threads&) = delete;
  ~Threads();

 private:
  std::size_t before_;
};

}  // namespace platewright::reading
