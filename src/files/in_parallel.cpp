// SPDX-License-Identifier: MIT
#include "files/in_parallel.hpp"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <system_error>
#include <thread>
#include <utility>
#include <vector>

namespace platewright::reading {
namespace {

std::size_t& threads_told() {
  static thread_local std::size_t told = 0;
  return told;
}

std::size_t threads_for(std::size_t count) {
  if (threads_told() > 0) return threads_told();
  // A thread costs as much as a few files, and more than so many wait for memory.
  constexpr std::size_t worth_a_thread = 100;
  constexpr std::size_t most = 8;
  const std::size_t cores = std::max(1U, std::thread::hardware_concurrency());
  return std::clamp<std::size_t>(count / worth_a_thread, 1, std::min(cores, most));
}

/// The numbers that are not taken yet, and the first thing that was thrown.
class Work {
 public:
  Work(std::size_t count, const std::function<void(std::size_t)>& work)
      : count_(count), work_(work) {}

  void take_all() noexcept {
    try {
      for (std::size_t i = next_++; i < count_; i = next_++) work_(i);
    } catch (...) {
      const std::lock_guard lock(mutex_);
      if (!thrown_) thrown_ = std::current_exception();
      next_ = count_;
    }
  }

  void throw_on() const {
    if (thrown_) std::rethrow_exception(thrown_);
  }

 private:
  std::size_t count_;
  const std::function<void(std::size_t)>& work_;
  std::atomic<std::size_t> next_ = 0;
  std::mutex mutex_;
  std::exception_ptr thrown_;
};

}  // namespace

void in_parallel(std::size_t count, const std::function<void(std::size_t)>& work) {
  Work shared(count, work);
  {
    std::vector<std::jthread> helpers;
    try {
      for (std::size_t i = 1; i < threads_for(count); ++i) {
        helpers.emplace_back([&] { shared.take_all(); });
      }
    } catch (const std::system_error&) {
      // There are no more threads to be had: those that there are do it.
    }
    shared.take_all();
  }
  shared.throw_on();
}

bool are_many(std::size_t count) {
  return threads_for(count) > 1;
}

Threads::Threads(std::size_t threads) : before_(std::exchange(threads_told(), threads)) {}

Threads::~Threads() {
  threads_told() = before_;
}

}  // namespace platewright::reading
