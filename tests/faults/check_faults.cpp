// Every call of the system that a command makes goes wrong once, and the program is killed before
// it: `check_faults PROGRAM LIBRARY NUMBER COUNT [all]` for one of so many commands. In every way
// for `cost`, to a file and to whoever reads it; of the other commands in every way with `all`, and
// else in one way each call. The output is the old text or the new one, whole; what went wrong is
// said; nothing is left beside it, but by a kill.

#include <cstddef>
#include <exception>
#include <filesystem>
#include <iostream>
#include <iterator>
#include <stdexcept>
#include <string>
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

/// One command whose output goes to a file or to whoever reads it.
class Trial {
 public:
  Trial(std::string program, std::string library, FaultyCommand command)
      : program_(std::move(program)), library_(std::move(library)), command_(std::move(command)) {
    fs::create_directory(folder_.path() / "class");
    for (const auto& [name, text] : fault_books()) write_file(folder_.path() / name, text);
    fs::create_directory(folder_.path() / "out");
    const Outcome outcome = run_with({});
    if (outcome.exit != 0) {
      throw std::runtime_error(command_.words + ", without a fault: " + outcome.complained);
    }
    new_text_ = to_file() ? read_file(output()) : outcome.printed;
    if (new_text_.find(command_.prints) == std::string::npos) {
      throw std::runtime_error(command_.words + ": no sheet");
    }
  }

  /// All that the command has complained of.
  const std::string& said() const { return said_; }

  /// Goes on from call to call until there is none of that number. False where any went badly.
  template <class KindOf>
  bool each_call(const KindOf& kind_of, bool output_is_there, int& calls) {
    bool good = true;
    for (int at = 1; at < 5000; at += command_.stride) {
      const Kind& kind = kind_of(at);
      fs::remove_all(folder_.path() / "out");
      fs::create_directory(folder_.path() / "out");
      if (output_is_there) write_file(output(), old_text);
      fs::remove(met());
      const Outcome outcome =
          run_with({"FAULT_AT=" + std::to_string(at), std::string("FAULT_KIND=") + kind.name,
                    "FAULT_MET=" + met().string(), "LD_PRELOAD=" + library_,
                    "ASAN_OPTIONS=verify_asan_link_order=0"});
      if (!fs::exists(met())) break;
      ++calls;
      said_ += outcome.complained;
      const std::string wrong =
          to_file() ? complaint(kind, outcome, output_is_there) : of_printed(kind, outcome);
      if (wrong.empty()) continue;
      good = false;
      std::cout << command_.words << ": " << kind.name << " at call " << at << ": " << wrong << "\n"
                << outcome.complained;
    }
    return good;
  }

  /// Every call goes wrong in every way, with an old file there and without one.
  bool each_kind(int& calls) {
    bool good = true;
    for (const Kind& kind : kinds) {
      const auto same = [&](int) -> const Kind& { return kind; };
      if (to_file()) good = each_call(same, false, calls) && good;
      good = each_call(same, true, calls) && good;
    }
    return good;
  }

  /// Every call goes wrong in one of the ways, in turn from `first` on.
  bool kinds_in_turn(std::size_t first, int& calls) {
    return each_call(
        [&](int at) -> const Kind& {
          return kinds[(first + static_cast<std::size_t>(at)) % std::size(kinds)];
        },
        true, calls);
  }

 private:
  fs::path output() const { return folder_.path() / "out" / "card.txt"; }
  fs::path met() const { return folder_.path() / "met"; }
  bool to_file() const { return command_.to_file; }

  Outcome run_with(const std::vector<std::string>& settings) const {
    std::vector<std::string> words{"env"};
    words.insert(words.end(), settings.begin(), settings.end());
    words.push_back(program_);
    for (const std::string& word : words_of(command_.words)) words.push_back(word);
    if (to_file()) words.insert(words.end(), {"--output", "out/card.txt"});
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
    const std::string text = fs::exists(output()) ? read_file(output()) : "";
    const bool is_old = output_was_there ? text == old_text : !fs::exists(output());
    if (text != new_text_ && !is_old) return "neither the old text nor the new one";
    if (outcome.exit == 0 && text != new_text_) return "done, it says, and it is not";
    const std::string wrong = of_ending(kind, outcome);
    if (!wrong.empty() || std::string(kind.name) == "kill") return wrong;
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
    bool good = is_cost || count == 6 ? trial.each_kind(calls) : trial.kinds_in_turn(number, calls);
    // None would say that the library sees no call of this command.
    if (calls < 10) {
      good = false;
      std::cout << command.words << ": " << calls << " calls went wrong, no more\n";
    }
    if (is_cost && command.to_file) good = all_said(trial.said()) && good;
    std::cout << command.words << ": " << calls << " calls went wrong\n";
    return good ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
