// SPDX-License-Identifier: MIT
// Each number once, whatever the threads do; what is thrown is thrown on.

#include "files/in_parallel.hpp"

#include <algorithm>
#include <atomic>
#include <stdexcept>
#include <vector>

#include "support/catch.hpp"

using namespace platewright::reading;

TEST_CASE("every number is worked on once, by one thread or by many") {
  for (const std::size_t threads : {1U, 2U, 7U}) {
    const Threads so_many(threads);
    for (const std::size_t count : {0U, 1U, 5U, 1000U}) {
      std::vector<int> met(count, 0);
      in_parallel(count, [&](std::size_t i) { ++met[i]; });
      CHECK(std::count(met.begin(), met.end(), 1) == static_cast<std::ptrdiff_t>(count));
    }
  }
}

TEST_CASE("what a work throws is thrown on, and little is begun after it") {
  const Threads four(4);
  std::atomic<int> begun = 0;
  const auto work = [&](std::size_t i) {
    ++begun;
    if (i == 3) throw std::runtime_error("the fourth");
  };
  CHECK_THROWS_AS(in_parallel(1'000'000, work), std::runtime_error);
  CHECK(begun < 1'000'000);
}

TEST_CASE("a few files are not worth a thread") {
  CHECK_FALSE(are_many(1));
  CHECK_FALSE(are_many(50));
  const Threads two(2);
  CHECK(are_many(1));
}
