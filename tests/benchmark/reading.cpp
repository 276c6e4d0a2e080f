// SPDX-License-Identifier: MIT
// A book of ten thousand recipes, checked and quoted by the program, against the bare events that
// yaml-cpp makes of the same bytes.

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <ctime>
#include <functional>
#include <iomanip>
#include <iostream>
#include <iterator>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

#include "benchmark/large_book.hpp"

using namespace platewright::benchmarks;

namespace {

/// Takes the events and does nothing with them.
class Events : public YAML::EventHandler {
 public:
  void OnDocumentStart(const YAML::Mark&) override {}
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark&, YAML::anchor_t) override {}
  void OnAlias(const YAML::Mark&, YAML::anchor_t) override {}
  void OnScalar(const YAML::Mark&, const std::string&, YAML::anchor_t,
                const std::string&) override {}
  void OnSequenceStart(const YAML::Mark&, const std::string&, YAML::anchor_t,
                       YAML::EmitterStyle::value) override {}
  void OnSequenceEnd() override {}
  void OnMapStart(const YAML::Mark&, const std::string&, YAML::anchor_t,
                  YAML::EmitterStyle::value) override {}
  void OnMapEnd() override {}
};

/// What a piece of work took.
struct Taken {
  double wall = 0;       ///< ms
  double processor = 0;  ///< ms, of all threads and of the system
  double memory = 0;     ///< MB at most; 0 where it was not looked at
};

double processor_time() {
  return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

/// The events alone: the texts are in memory before.
Taken take_events(const std::vector<std::string>& texts) {
  const auto begin = std::chrono::steady_clock::now();
  const double before = processor_time();
  Events events;
  for (const std::string& text : texts) {
    std::istringstream stream(text);
    YAML::Parser parser(stream);
    while (parser.HandleNextDocument(events)) {
    }
  }
  const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - begin;
  return {wall.count(), processor_time() - before, 0};
}

/// A program as a whole process, from its start to its end.
Taken take_program(const std::string& program, const char* command, const std::string& file) {
  const auto begin = std::chrono::steady_clock::now();
  const pid_t child = fork();
  if (child < 0) throw std::runtime_error("no process can be made");
  if (child == 0) {
    const int nowhere = open("/dev/null", O_WRONLY | O_CLOEXEC);
    dup2(nowhere, STDOUT_FILENO);
    dup2(nowhere, STDERR_FILENO);
    execl(program.c_str(), program.c_str(), command, file.c_str(), nullptr);
    _exit(127);
  }
  int status = 0;
  rusage usage{};
  wait4(child, &status, 0, &usage);
  const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - begin;
  if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) {
    throw std::runtime_error(program + " " + command + " failed");
  }
  const auto ms = [](const timeval& time) {
    return 1000.0 * static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1000.0;
  };
  return {wall.count(), ms(usage.ru_utime) + ms(usage.ru_stime),
          static_cast<double>(usage.ru_maxrss) / 1024.0};
}

double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

/// Of all rounds, the median of what `figure` says of one.
template <class Figure>
double middle(std::size_t rounds, Figure&& figure) {
  std::vector<double> all;
  for (std::size_t round = 0; round < rounds; ++round) all.push_back(figure(round));
  return median(std::move(all));
}

std::string page(const std::string& program, const std::filesystem::path& folder) {
  constexpr std::size_t rounds = 11;
  LargeBook(folder).write();
  std::vector<std::string> texts;
  double bytes = 0;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    std::ifstream file(entry.path(), std::ios::binary);
    texts.emplace_back(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
    bytes += static_cast<double>(texts.back().size());
  }
  const std::string event = (folder / "event.yaml").string();
  struct Work {
    const char* name;
    std::function<Taken()> take;
    std::vector<Taken> taken;
  };
  std::array<Work, 3> works{
      Work{"bare events of yaml-cpp, on one core", [&] { return take_events(texts); }, {}},
      Work{"`check`", [&] { return take_program(program, "check", event); }, {}},
      Work{"`quote` of an event in it, with break-even",
           [&] { return take_program(program, "quote", event); },
           {}}};
  for (std::size_t round = 0; round < rounds; ++round) {
    for (Work& work : works) work.taken.push_back(work.take());
  }
  std::ostringstream out;
  out << std::fixed
      << "# A large book read\n\nMade by `platewright_reading_benchmark --program FILE`; nothing "
         "here is written by hand.\n\n- Data: "
      << LargeBook::recipes << " recipes, one a file, in " << LargeBook::chapters
      << " chapters, and a larder of " << LargeBook::goods << ": " << texts.size() << " files, "
      << std::setprecision(2) << bytes / 1e6
      << " MB.\n- The program is a process from its start to its end, with what it reads from the "
         "disk's cache; the events are made of texts that are in memory. Each round does all "
         "three, one after the other: medians of "
      << rounds
      << " rounds, and of the ratios within each round.\n- The processor's time is that of all "
         "threads and of the system.\n\n"
         "| work | wall ms | processor ms | memory MB | wall / events | processor / events | "
         "memory / files |\n|---|--:|--:|--:|--:|--:|--:|\n";
  for (const Work& work : works) {
    const auto& bare = works.front().taken;
    const double memory = middle(rounds, [&](std::size_t i) { return work.taken[i].memory; });
    const auto figure = [&](double value, int digits) {
      std::ostringstream text;
      text << std::fixed << std::setprecision(digits) << value;
      return text.str();
    };
    out << "| " << work.name << " | "
        << figure(middle(rounds, [&](std::size_t i) { return work.taken[i].wall; }), 0) << " | "
        << figure(middle(rounds, [&](std::size_t i) { return work.taken[i].processor; }), 0)
        << " | " << (memory > 0 ? figure(memory, 0) : "") << " | "
        << figure(middle(rounds, [&](std::size_t i) { return work.taken[i].wall / bare[i].wall; }),
                  2)
        << " | "
        << figure(
               middle(rounds,
                      [&](std::size_t i) { return work.taken[i].processor / bare[i].processor; }),
               2)
        << " | " << (memory > 0 ? figure(memory * 1024 * 1024 / bytes, 1) : "") << " |\n";
  }
  return out.str();
}

}  // namespace

int main(int count, char** words) {
  const std::vector<std::string> arguments(words + 1, words + count);
  const bool to_file = arguments.size() == 4 && arguments[2] == "--results";
  if ((arguments.size() != 2 && !to_file) || arguments[0] != "--program") {
    std::cerr << "platewright_reading_benchmark --program FILE [--results FILE]\n";
    return 2;
  }
  std::string folder = (std::filesystem::temp_directory_path() / "large-book-XXXXXX").string();
  if (mkdtemp(folder.data()) == nullptr) return 1;
  int result = 0;
  try {
    const std::string text = page(arguments[1], folder);
    if (to_file) {
      std::ofstream(arguments[3], std::ios::binary) << text;
    } else {
      std::cout << text;
    }
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    result = 1;
  }
  std::filesystem::remove_all(folder);
  return result;
}
