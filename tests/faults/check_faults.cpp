// SPDX-License-Identifier: MIT
// Every call of the system that a command makes goes wrong once, and the program is killed before
// it: `check_faults PROGRAM LIBRARY NUMBER COUNT [all]` for one of so many commands. In every way
// for `cost`, to a file and to whoever reads it; of the other commands in every way with `all`, and
// else in one way each call. What other tests let go wrong in every way, or comes again and again,
// is sampled (`apart`). The output is the old text or the new one, whole; what went wrong is said;
// nothing is left beside it, but by a kill.

#include <cstddef>
#include <exception>
#include <filesystem>
#include <iostream>
#include <iterator>
#include <map>
#include <numeric>
#include <set>
#include <sstream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "faults/fault_books.hpp"
#include "support/folder.hpp"
#include "support/process.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;

const std::string old_text = "an older sheet\n";

/// One way of going wrong; `is_noticed` where the command can't just go on.
struct Kind {
  const char* name;
  bool is_noticed;
};
constexpr Kind kinds[] = {
    {"EIO", true}, {"ENOSPC", true}, {"EINTR", false}, {"short", false}, {"kill", true}};

/// A call of the system, counted from 1, and what it is about.
struct Call {
  int at;
  std::string about;

  bool is_of(std::string_view words) const { return about.find(words) != std::string::npos; }
  bool is_of_output() const {
    return is_of("card.txt") || is_of(".platewright-") || is_of("pipe:") || about == "out" ||
           about.ends_with("/out") || is_of("out/");
  }
};

/// Of so many calls alike one is enough.
int apart(const Call& call, bool in_every_way) {
  if (call.is_of("zoneinfo")) return 41;   // a thousand, of a hundred files
  if (call.is_of("(deleted)")) return 31;  // a thousand, of the parts of a workbook
  // These files are read in every way by `cost`, by the same reader.
  if (!in_every_way && (call.is_of("larder.yaml") || call.is_of("soup.yaml"))) return 3;
  return 1;
}

/// One command, its output, and all the calls that it makes.
class Trial {
 public:
  Trial(std::string program, std::string library, FaultyCommand command)
      : program_(std::move(program)), library_(std::move(library)), command_(std::move(command)) {
    fs::create_directory(folder_.path() / "class");
    for (const auto& [name, text] : fault_books()) write_file(folder_.path() / name, text);
    make_output_folder(command_.goes == SheetGoes::to_file);
    const Outcome outcome = run_with({"FAULT_LOG=" + log().string(), "LD_PRELOAD=" + library_,
                                      "ASAN_OPTIONS=verify_asan_link_order=0"});
    if (outcome.exit != 0) {
      throw std::runtime_error(command_.words + ", without a fault: " + outcome.complained);
    }
    new_text_ = made(outcome);
    if ((new_text_ + outcome.printed).find(command_.prints) == std::string::npos) {
      throw std::runtime_error(command_.words + ": no sheet");
    }
    std::istringstream lines(read_file(log()));
    for (std::string line; std::getline(lines, line);) {
      calls_.push_back({static_cast<int>(calls_.size()) + 1, line});
    }
  }

  /// All that the command has complained of.
  const std::string& said() const { return said_; }

  /// Each call goes wrong in every way, with an old file there; where a new one is made, each of
  /// the output without one too.
  bool each_kind(int& done) {
    bool good = true;
    for (const Kind& kind : kinds) {
      for (const Call& call : sampled(true, 0)) {
        good = goes_wrong(call, kind, true) && good;
        ++done;
        if (command_.goes != SheetGoes::to_file || !call.is_of_output()) continue;
        good = goes_wrong(call, kind, false) && good;
        ++done;
      }
    }
    return good;
  }

  /// Each call of the output in every way, the others in one.
  bool each_kind_of_output(int& done) {
    bool good = kinds_in_turn(0, done);
    for (const Kind& kind : kinds) {
      for (const Call& call : calls_) {
        if (!call.is_of_output()) continue;
        good = goes_wrong(call, kind, true) && good;
        ++done;
      }
    }
    return good;
  }

  /// Every call goes wrong in one of the ways, in turn from `first` on.
  bool kinds_in_turn(std::size_t first, int& done) {
    bool good = true;
    for (const Call& call : sampled(false, first)) {
      const std::size_t kind = (first + static_cast<std::size_t>(call.at)) % std::size(kinds);
      good = goes_wrong(call, kinds[kind], true) && good;
      ++done;
    }
    return good;
  }

 private:
  fs::path output() const { return folder_.path() / "out" / "card.txt"; }
  fs::path met() const { return folder_.path() / "met"; }
  fs::path log() const { return folder_.path() / "log"; }

  void make_output_folder(bool output_is_there) const {
    fs::remove_all(folder_.path() / "out");
    fs::create_directory(folder_.path() / "out");
    if (output_is_there) write_file(output(), old_text);
  }

  /// The calls of which one in so many is taken, from another one on for each command.
  std::vector<Call> sampled(bool in_every_way, std::size_t from) const {
    std::map<std::string, std::size_t> seen;
    std::vector<Call> out;
    for (const Call& call : calls_) {
      const auto every = static_cast<std::size_t>(apart(call, in_every_way));
      const std::string alike = call.is_of("zoneinfo")    ? "zones"
                                : call.is_of("(deleted)") ? "parts"
                                                          : call.about;
      if ((seen[alike]++ + from) % every == 0) out.push_back(call);
    }
    return out;
  }

  /// False, and said, where this fault is not borne.
  bool goes_wrong(const Call& call, const Kind& kind, bool output_is_there) {
    output_is_there = output_is_there && command_.goes == SheetGoes::to_file;
    make_output_folder(output_is_there);
    fs::remove(met());
    const Outcome outcome =
        run_with({"FAULT_AT=" + std::to_string(call.at), std::string("FAULT_KIND=") + kind.name,
                  "FAULT_MET=" + met().string(), "LD_PRELOAD=" + library_,
                  "ASAN_OPTIONS=verify_asan_link_order=0"});
    said_ += outcome.complained;
    // A new file takes fewer calls than one in the place of an old one.
    const bool may_be_missed = command_.goes == SheetGoes::to_file && !output_is_there;
    std::string wrong = may_be_missed ? "" : "is not met";
    if (fs::exists(met())) {
      wrong = command_.goes == SheetGoes::to_reader ? of_printed(kind, outcome)
                                                    : complaint(kind, outcome, output_is_there);
    }
    if (wrong.empty()) return true;
    std::cout << command_.words << ": " << kind.name << " at call " << call.at << " (" << call.about
              << "): " << wrong << "\n"
              << outcome.complained;
    return false;
  }

  /// What the command has made; of a folder the names and texts of its files.
  std::string made(const Outcome& outcome) const {
    if (command_.goes == SheetGoes::to_reader) return outcome.printed;
    if (command_.goes == SheetGoes::to_file) {
      return fs::exists(output()) ? read_file(output()) : "";
    }
    std::set<std::string> files;
    for (const auto& entry : fs::recursive_directory_iterator(output().parent_path())) {
      files.insert(entry.path().filename().string() + ": " +
                   (entry.is_directory() ? "" : read_file(entry.path())));
    }
    return std::accumulate(files.begin(), files.end(), std::string());
  }

  Outcome run_with(const std::vector<std::string>& settings) const {
    std::vector<std::string> words{"env"};
    words.insert(words.end(), settings.begin(), settings.end());
    words.push_back(program_);
    for (const std::string& word : words_of(command_.words)) words.push_back(word);
    if (command_.goes == SheetGoes::to_file) {
      words.insert(words.end(), {"--output", "out/card.txt"});
    }
    return run(words, folder_.path(), 30);
  }

  /// What any command must not do, wherever its output goes.
  static std::string of_ending(const Kind& kind, const Outcome& outcome) {
    if (!kind.is_noticed && outcome.exit != 0) return "given up over what is no fault";
    if (std::string(kind.name) == "kill") return outcome.exit == 128 + 9 ? "" : "not killed";
    if (outcome.exit > 2) return "ended with " + std::to_string(outcome.exit);
    if (outcome.exit != 0 && outcome.complained.find("problem ") == std::string::npos) {
      return "nothing is said";
    }
    return {};
  }

  std::string of_printed(const Kind& kind, const Outcome& outcome) const {
    if (outcome.exit == 0 && outcome.printed != new_text_) return "done, it says, and it is not";
    if (new_text_.compare(0, outcome.printed.size(), outcome.printed) != 0) return "another text";
    return of_ending(kind, outcome);
  }

  std::string complaint(const Kind& kind, const Outcome& outcome, bool output_was_there) const {
    const bool killed = std::string(kind.name) == "kill";
    const std::string now = made(outcome);
    const bool is_old = now == (output_was_there ? old_text : "");
    // A folder that is being filled when the program is killed holds some of its files.
    if (now != new_text_ && !is_old && !(killed && command_.goes == SheetGoes::to_folder)) {
      return "neither the old text nor the new one";
    }
    if (outcome.exit == 0 && now != new_text_) return "done, it says, and it is not";
    const std::string wrong = of_ending(kind, outcome);
    if (!wrong.empty() || killed) return wrong;
    if (command_.goes == SheetGoes::to_folder) return {};
    for (const auto& entry : fs::directory_iterator(output().parent_path())) {
      if (entry.path() != output()) return "left behind: " + entry.path().filename().string();
    }
    return {};
  }

  std::string program_;
  std::string library_;
  FaultyCommand command_;
  TemporaryFolder folder_;
  std::string new_text_;
  std::string said_;
  std::vector<Call> calls_;
};

/// Whether a command that reads files and writes one has told of each thing that went wrong.
bool all_said(const std::string& said) {
  bool good = true;
  for (const char* id :
       {"file-not-readable", "file-not-writable", "output-no-room", "output-not-kept"}) {
    if (said.find(std::string("problem ") + id + "\n") != std::string::npos) continue;
    good = false;
    std::cout << "nothing was said of " << id << "\n";
  }
  return good;
}

/// The command of that number, counted from 0. Throws where there are not `count` of them.
FaultyCommand command_of(std::size_t number, std::size_t count) {
  const std::vector<FaultyCommand> commands = faulty_commands();
  if (commands.size() != count || number >= count) {
    throw std::runtime_error("there are " + std::to_string(commands.size()) + " commands");
  }
  return commands[number];
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  using namespace platewright::test;
  try {
    if (count != 5 && count != 6) {
      throw std::runtime_error("check_faults PROGRAM LIBRARY NUMBER COUNT [all]");
    }
    const std::size_t number = std::stoul(arguments[3]);
    const FaultyCommand command = command_of(number, std::stoul(arguments[4]));
    const bool is_cost = command.words.starts_with("cost soup");
    int calls = 0;
    Trial trial(arguments[1], arguments[2], command);
    const bool to_file = command.goes == SheetGoes::to_file;
    bool good = count == 6 || (is_cost && to_file) ? trial.each_kind(calls)
                : is_cost                          ? trial.each_kind_of_output(calls)
                                                   : trial.kinds_in_turn(number, calls);
    // None would say that the library sees no call of this command.
    if (calls < 10) {
      good = false;
      std::cout << command.words << ": " << calls << " calls went wrong, no more\n";
    }
    if (is_cost && to_file) good = all_said(trial.said()) && good;
    std::cout << command.words << ": " << calls << " calls went wrong\n";
    return good ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
