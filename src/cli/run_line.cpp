// SPDX-License-Identifier: MIT
#include "cli/run_line.hpp"

#include <cstdio>
#include <exception>
#include <utility>

#include "cli/open_book.hpp"
#include "cli/output.hpp"
#include "platewright/problem/catalogue/files.hpp"

namespace platewright::cli {
namespace {

/// Throws Failure for a format that what a command gives does not have.
void check_format(const Result& result, const std::string& format) {
  if (!result.plain.empty()) {
    if (format != result.plain_format) throw Failure(problems::format_not_taken(format));
    return;
  }
  for (const auto& [other, command] :
       {std::pair("icalendar", "timeline"), std::pair("xlsx", "workbook"),
        std::pair("json-ld", "card")}) {
    if (format == other) throw Failure(problems::format_of_another_command(format, command));
  }
}

int run_command(const CommandArguments& command, const CommonOptions& common, ProblemList& problems,
                const std::function<void(const Result&)>& give) {
  refuse_output_over_input(command, common);
  const Result result =
      std::visit([&](const auto& arguments) { return run(arguments, common, problems); }, command);
  from_argument("--format", [&] { check_format(result, common.format); });
  const bool check = std::holds_alternative<CheckArguments>(command);
  const bool failed = problems.has_errors();
  // A check's outcome is its problems: as records for a program, else on the screen as ever.
  if (!failed || (check && common.format != "text")) {
    give(result);
  }
  return failed ? book_has_problems : done;
}

}  // namespace

int run_line(const CommandArguments& command, const CommonOptions& common, ProblemList& problems,
             const std::function<void(const Result&)>& give) {
  try {
    return run_command(command, common, problems, give);
  } catch (const BookHasProblems&) {
    // they are in the list
  } catch (const WrongArgument& wrong) {
    problems.add(wrong.problem());
    return wrong_command_line;
  } catch (const Failure& failure) {
    problems.add(failure.problem());
  } catch (const std::exception& error) {
    static_cast<void>(std::fputs("platewright: ", stderr));
    static_cast<void>(std::fputs(error.what(), stderr));
    static_cast<void>(std::fputs("\n", stderr));
  }
  return book_has_problems;
}

}  // namespace platewright::cli
