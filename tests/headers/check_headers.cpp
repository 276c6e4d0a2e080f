// SPDX-License-Identifier: MIT
// Does each public header compile alone? `check_headers BOOST FOLDER... -- COMPILER FLAG...`.
//
// Reading Boost takes more than a second a header, so BOOST, a header of which there is a
// precompiled form, goes first for a header that reads Boost's numbers itself, whatever way: it
// sees nothing then that it would not have seen. Any other header is compiled with nothing before
// it.

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <filesystem>
#include <iostream>
#include <mutex>
#include <set>
#include <stdexcept>
#include <string>
#include <thread>
#include <vector>

#include "support/folder.hpp"
#include "support/process.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;
using Lines = std::vector<std::string>;

struct Work {
  std::string boost;
  std::vector<fs::path> folders;
  Lines command;
  /// As they are included: `platewright/number/round.hpp`.
  Lines headers;
};

fs::path place_of(const Work& work, const std::string& header) {
  for (const fs::path& folder : work.folders) {
    if (fs::is_regular_file(folder / header)) return folder / header;
  }
  throw std::runtime_error("no header " + header);
}

bool reads_boost(const Work& work, const std::string& header, std::set<std::string>& seen) {
  if (header == "platewright/number/rational.hpp") return true;
  if (!seen.insert(header).second) return false;
  for (const std::string& line : lines_of(read_file(place_of(work, header)))) {
    std::string rest;
    if (takes(line, "#include \"", rest) &&
        reads_boost(work, rest.substr(0, rest.find('"')), seen)) {
      return true;
    }
  }
  return false;
}

/// What the compiler says about the header; nothing if it compiles.
std::string refusal(const Work& work, const std::string& header) {
  Lines command = work.command;
  std::set<std::string> seen;
  if (reads_boost(work, header, seen)) command.insert(command.end(), {"-include", work.boost});
  // Forced in as the last one and not compiled as the main file, where `#pragma once` is a warning.
  command.insert(command.end(), {"-include", header, "-fsyntax-only", "-x", "c++", "/dev/null"});
  const Outcome outcome = run(command, "/", 120);
  return outcome.exit == 0 ? std::string() : outcome.complained + "\n";
}

bool check(const Work& work) {
  std::atomic<std::size_t> next{0};
  std::atomic<bool> good{true};
  std::mutex printing;
  const auto take_turns = [&] {
    for (std::size_t i = next++; i < work.headers.size(); i = next++) {
      const std::string text = refusal(work, work.headers[i]);
      if (text.empty()) continue;
      good = false;
      const std::lock_guard<std::mutex> turn(printing);
      std::cout << work.headers[i] << " does not compile alone\n" << text;
    }
  };
  std::vector<std::thread> threads;
  const unsigned count = std::max(1U, std::thread::hardware_concurrency());
  for (unsigned i = 0; i < count; ++i) threads.emplace_back(take_turns);
  for (std::thread& thread : threads) thread.join();
  std::cout << work.headers.size() << " headers\n";
  return good && !work.headers.empty();
}

Work work_from(const Lines& words) {
  Work work;
  const auto dashes = std::find(words.begin(), words.end(), "--");
  work.boost = words.at(0);
  work.folders.assign(words.begin() + 1, dashes);
  work.command.assign(dashes + 1, words.end());
  for (const fs::path& folder : work.folders) {
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
      if (entry.path().extension() == ".hpp") {
        work.headers.push_back(fs::relative(entry.path(), folder).string());
      }
    }
  }
  std::sort(work.headers.begin(), work.headers.end());
  return work;
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  try {
    const platewright::test::Lines words(arguments + 1, arguments + count);
    return platewright::test::check(platewright::test::work_from(words)) ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
