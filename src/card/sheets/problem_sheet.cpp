// SPDX-License-Identifier: MIT
#include "platewright/card/problem_sheet.hpp"

#include <algorithm>

namespace platewright {
namespace {

/// Each file that is read by itself, and whether it is in order.
Facts single_files(const std::vector<SingleFile>& single) {
  Facts facts{"read_by_themselves", "", {}, ColumnKind::words};
  for (const SingleFile& file : single) {
    facts.add("file_" + std::to_string(facts.facts.size() + 1), std::string(name_of(file.kind)),
              words(file.file + (file.in_order ? ", in order" : ", not in order")));
  }
  return facts;
}

}  // namespace

Sheet problem_sheet(const ProblemList& problems, const std::vector<std::string>& files,
                    const std::vector<SingleFile>& single) {
  Sheet sheet(SheetKind::check);
  const auto count = [&](Severity severity) {
    return std::count_if(problems.all().begin(), problems.all().end(),
                         [&](const Problem& problem) { return problem.severity == severity; });
  };
  const auto errors = count(Severity::error);
  const auto warnings = count(Severity::warning);
  sheet.title = errors == 0 ? "No problems" : std::to_string(errors) + " problems";
  if (errors == 1) sheet.title = "1 problem";
  Facts facts{"summary", "", {}};
  const auto number = [](auto value) { return figure(Rational(value), std::to_string(value)); };
  facts.add("files", "Files read", number(files.size()));
  facts.add("problems", "Problems", number(errors));
  facts.add("warnings", "Warnings", number(warnings));
  sheet.add(std::move(facts));
  if (!single.empty()) sheet.add(single_files(single));
  if (problems.all().empty()) return sheet;
  Table table{"problems",
              "",
              {words_column("id", "Id"), words_column("severity", "Severity"),
               words_column("file", "File"), figures_column("line", "Line"),
               figures_column("column", "Column"), figures_column("times", "Times"),
               words_column("path", "In the book"), words_column("found", "Found"),
               words_column("expected", "Wanted"), words_column("remedy", "Do")},
              {},
              {},
              {}};
  for (const Problem& problem : problems.all()) {
    table.add({words(problem.id),
               words(problem.severity == Severity::error ? "problem" : "warning"),
               words(problem.place.file), number(problem.place.line), number(problem.place.column),
               number(problem.again.size() + 1), words(problem.place.path), words(problem.found),
               words(problem.expected), words(problem.remedy)});
  }
  sheet.add(std::move(table));
  return sheet;
}

}  // namespace platewright
