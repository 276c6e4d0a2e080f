// SPDX-License-Identifier: MIT
// Does each public header compile alone? `check_headers FOLDER... -- COMPILER FLAG...`.
//
// To read the same floors below for each of them takes a quarter of an hour. So some headers are
// precompiled, and one that reads such a header has it in front: it sees nothing then that it would
// not have seen, since all that it reads is read before its own text anyway.

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <filesystem>
#include <functional>
#include <iostream>
#include <mutex>
#include <stdexcept>
#include <string>
#include <thread>
#include <utility>
#include <vector>

#include "headers/header_graph.hpp"
#include "support/folder.hpp"
#include "support/process.hpp"

namespace platewright::test {
namespace {

using Lines = std::vector<std::string>;

constexpr std::size_t most_precompiled = 16;

Lines joined(Lines words, const Lines& more) {
  words.insert(words.end(), more.begin(), more.end());
  return words;
}

/// Does `work` for each name, as many at a time as the machine has processors.
void take_turns(const Lines& names, const std::function<void(const std::string&)>& work) {
  std::atomic<std::size_t> next{0};
  const auto turns = [&] {
    for (std::size_t i = next++; i < names.size(); i = next++) work(names[i]);
  };
  std::vector<std::thread> threads;
  const unsigned count = std::max(1U, std::thread::hardware_concurrency());
  for (unsigned i = 0; i < count; ++i) threads.emplace_back(turns);
  for (std::thread& thread : threads) thread.join();
}

class Check {
 public:
  Check(const std::vector<std::filesystem::path>& folders, Lines command)
      : graph_(folders), command_(std::move(command)) {}

  bool all_compile() {
    const Lines wanted = graph_.worth_precompiling(most_precompiled);
    take_turns(wanted, [this](const std::string& name) { precompile(name); });
    take_turns(graph_.names(), [this](const std::string& name) { compile(name); });
    std::cout << graph_.names().size() << " headers\n";
    return good_ && !graph_.names().empty();
  }

 private:
  std::string precompiled(const std::string& name) const {
    std::string file = name;
    std::replace(file.begin(), file.end(), '/', '-');
    return (folder_.path() / (file + ".pch")).string();
  }

  /// One that does not compile is told of when it is compiled itself, and helps no other.
  void precompile(const std::string& name) {
    const Outcome outcome =
        run(joined(command_, {"-fpch-instantiate-templates", "-x", "c++-header",
                              graph_.file(name).string(), "-o", precompiled(name)}),
            "/", most_seconds);
    const std::lock_guard<std::mutex> turn(turn_);
    if (outcome.exit == 0) precompiled_.push_back(name);
  }

  void compile(const std::string& name) {
    Lines words = command_;
    if (const auto start = graph_.heaviest(precompiled_, name)) {
      words = joined(words, {"-include-pch", precompiled(*start)});
    }
    // Forced in as the last one and not compiled as the main file, where `#pragma once` is a
    // warning.
    const Outcome outcome =
        run(joined(words, {"-include", name, "-fsyntax-only", "-x", "c++", "/dev/null"}), "/",
            most_seconds);
    if (outcome.exit == 0) return;
    const std::lock_guard<std::mutex> turn(turn_);
    good_ = false;
    std::cout << name << " does not compile alone\n" << outcome.complained << "\n";
  }

  static constexpr unsigned most_seconds = 300;

  HeaderGraph graph_;
  Lines command_;
  TemporaryFolder folder_;
  std::mutex turn_;
  Lines precompiled_;
  bool good_ = true;
};

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  try {
    using platewright::test::Check;
    const std::vector<std::string> words(arguments + 1, arguments + count);
    const auto dashes = std::find(words.begin(), words.end(), "--");
    if (dashes == words.end()) throw std::runtime_error("no -- before the compiler");
    Check check({words.begin(), dashes}, {dashes + 1, words.end()});
    return check.all_compile() ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
