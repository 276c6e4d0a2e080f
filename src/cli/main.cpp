// SPDX-License-Identifier: MIT
// The program: arguments in, sheets out.

#include <unistd.h>

#include <cstdio>
#include <exception>
#include <utility>

#include "cli/arguments.hpp"
#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "cli/output.hpp"
#include "cli/terminal.hpp"
#include "cli/write_file.hpp"
#include "platewright/problem/catalogue/files.hpp"

namespace {

using namespace platewright;
using namespace platewright::cli;

constexpr int done = 0;
constexpr int book_has_problems = 1;
constexpr int wrong_command_line = 2;

void print(std::FILE* stream, const std::string& text) {
  // Where even this can't be written there is no one left to tell.
  static_cast<void>(std::fwrite(text.data(), 1, text.size(), stream));
}

/// Throws Failure for a format that what a command gives does not have.
void check_format(const Result& result, const std::string& format) {
  if (!result.plain.empty()) {
    if (format != result.plain_format) throw Failure(problems::format_not_taken(format));
    return;
  }
  for (const auto& [other, command] :
       {std::pair("icalendar", "timeline"), std::pair("xlsx", "workbook")}) {
    if (format == other) throw Failure(problems::format_of_another_command(format, command));
  }
}

/// Runs the command and puts out its sheet, or nothing where there is any error.
int run_command(const CommandArguments& command, const CommonOptions& common,
                ProblemList& problems) {
  refuse_output_over_input(command, common);
  const Result result =
      std::visit([&](const auto& arguments) { return run(arguments, common, problems); }, command);
  from_argument("--format", [&] { check_format(result, common.format); });
  const bool check = std::holds_alternative<CheckArguments>(command);
  const bool failed = problems.has_errors();
  // A check's outcome is its problems: as records for a program, else on the screen as ever.
  if (!failed || (check && common.format != "text")) {
    put(result.plain.empty() ? written(*result.sheet, common, result.width) : result.plain, common);
  }
  return failed ? book_has_problems : done;
}

}  // namespace

int main(int count, char** arguments) {
  const CommandLine line = read_command_line(count, arguments);
  ProblemList problems;
  if (!line.command && line.exit_code != done) {
    print(stderr, line.message);
    return line.exit_code;
  }
  int exit_code = book_has_problems;
  try {
    if (line.command) {
      exit_code = run_command(*line.command, line.common, problems);
    } else {
      write_standard_output(line.message);
      exit_code = done;
    }
  } catch (const BookHasProblems&) {
    // they are in the list
  } catch (const WrongArgument& wrong) {
    problems.add(wrong.problem());
    exit_code = wrong_command_line;
  } catch (const Failure& failure) {
    problems.add(failure.problem());
  } catch (const std::exception& error) {
    print(stderr, std::string("platewright: ") + error.what() + "\n");
  }
  print(stderr, problem_text(problems, may_be_coloured(STDERR_FILENO)));
  return exit_code;
}
