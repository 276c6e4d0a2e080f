// SPDX-License-Identifier: MIT
// Whatever is typed, there is a sheet, or it is said what is wrong; nothing else is thrown. One
// word a line.

#include <unistd.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <variant>
#include <vector>

#include "cli/arguments.hpp"
#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "cli/output.hpp"
#include "faults/fault_books.hpp"
#include "fuzz/insist.hpp"
#include "support/folder.hpp"

namespace {

using namespace platewright;
using namespace platewright::cli;
using platewright::test::insist;

/// A folder with a small book, in which this program then is; standard input has nothing.
class FolderOfBooks {
 public:
  FolderOfBooks() {
    for (const auto& [name, text] : test::fault_books()) {
      test::write_file(folder_.path() / name, text);
    }
    std::filesystem::current_path(folder_.path());
    if (std::freopen("/dev/null", "r", stdin) == nullptr) throw std::runtime_error("no /dev/null");
  }

 private:
  test::TemporaryFolder folder_;
};

std::vector<std::string> words_in(const std::uint8_t* data, std::size_t size) {
  // What the system hands to a program holds no zero byte.
  std::string text(reinterpret_cast<const char*>(data), size);
  std::replace(text.begin(), text.end(), '\0', ' ');
  return test::lines_of(text);
}

/// What the command gives, as it would be printed; nothing is written to a file. `new` would write,
/// and `answer` runs what others give.
void run_command(const CommandLine& line) {
  if (std::holds_alternative<NewArguments>(*line.command)) return;
  if (std::holds_alternative<AnswerArguments>(*line.command)) return;
  ProblemList problems;
  try {
    refuse_output_over_input(*line.command, line.common);
    const Result result =
        std::visit([&](const auto& arguments) { return run(arguments, line.common, problems); },
                   *line.command);
    if (problems.has_errors()) return;
    insist(result.sheet.has_value() || !result.plain.empty(), "a command gives something");
    text_of(result, line.common);
  } catch (const BookHasProblems&) {
    insist(problems.has_errors(), "what is wrong with a book is said");
  } catch (const WrongArgument&) {
  } catch (const Failure&) {
  }
  problem_text(problems, false);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const FolderOfBooks folder;
  const std::vector<std::string> words = words_in(data, size);
  std::vector<const char*> arguments{"platewright"};
  for (const std::string& word : words) arguments.push_back(word.c_str());
  const CommandLine line = read_command_line(static_cast<int>(arguments.size()), arguments.data());
  insist(line.command.has_value() || !line.message.empty(), "a command, or words for the user");
  insist(!line.command || line.exit_code == 0, "a command that is run is in order");
  if (line.command) run_command(line);
  return 0;
}
