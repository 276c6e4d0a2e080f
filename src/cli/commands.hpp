// SPDX-License-Identifier: MIT
#pragma once
// Each command: arguments in, a sheet out. No arithmetic here: every command is a call or two of
// the library.

#include <optional>
#include <string>

#include "cli/arguments.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright::cli {

/// What a command gives: a sheet for the writers, or a text that is printed as it is.
struct Result {
  std::optional<Sheet> sheet;
  std::string plain;                  ///< instead of the sheet, where it is not empty
  unsigned width = 80;                ///< of a text page if the user says nothing
  std::string plain_format = "text";  ///< what `plain` is written in
};

// Each throws Failure for what it can't do, and puts the problems of a book that it reads into
// `problems`; where there are errors among them the result is not to be used.

Result run(const CardArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const YieldArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const WorksheetArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const ExerciseArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const TrialsArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const RoastArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const LethalityArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const CostArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const PlatesArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const QuoteArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const BudgetArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const PricesArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const OrderArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const TimelineArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const DayArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const RecipeArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const WorkbookArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const CheckArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const MeasureArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const TablesArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const SchemaArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const AnswerArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const NewArguments& arguments, const CommonOptions& common, ProblemList& problems);
Result run(const CompletionsArguments& arguments, const CommonOptions& common,
           ProblemList& problems);

}  // namespace platewright::cli
