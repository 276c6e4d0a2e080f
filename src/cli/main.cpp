// SPDX-License-Identifier: MIT
// The program: arguments in, sheets out.

#include <unistd.h>

#include <cstdio>

#include "cli/output.hpp"
#include "cli/run_line.hpp"
#include "cli/terminal.hpp"
#include "cli/write_file.hpp"

namespace {

using namespace platewright;
using namespace platewright::cli;

void print(std::FILE* stream, const std::string& text) {
  // Where even this can't be written there is no one left to tell.
  static_cast<void>(std::fwrite(text.data(), 1, text.size(), stream));
}

}  // namespace

int main(int count, char** arguments) {
  const CommandLine line = read_command_line(count, arguments);
  ProblemList problems;
  int exit_code = line.exit_code;
  if (line.command) {
    const CommonOptions& common = line.common;
    exit_code = run_line(*line.command, common, problems, [&](const Result& result) {
      const std::string text = text_of(result, common);
      if (!text.empty()) put(text, common);
    });
  } else if (exit_code != done) {
    print(stderr, line.message);
  } else {
    try {
      write_standard_output(line.message);
    } catch (const Failure& failure) {
      problems.add(failure.problem());
      exit_code = book_has_problems;
    }
  }
  print(stderr, problem_text(problems, may_be_coloured(STDERR_FILENO)));
  return exit_code;
}
