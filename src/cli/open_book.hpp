// SPDX-License-Identifier: MIT
#pragma once
// Books and sizes for the commands.

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "cli/arguments.hpp"
#include "platewright/files/read_book.hpp"
#include "platewright/recipe/scale_plan.hpp"

namespace platewright::cli {

/// Thrown where the book has errors; they are in the problem list already.
struct BookHasProblems {};

/// A Failure whose cause stands on the command line, not in the book.
class WrongArgument : public Failure {
 public:
  using Failure::Failure;
};

/// What `read` gives. Throws WrongArgument, which names the argument, where it throws Failure.
template <class Read>
auto from_argument(std::string_view argument, Read&& read) {
  try {
    return std::forward<Read>(read)();
  } catch (const Failure& failure) {
    Problem problem = failure.problem();
    problem.place.path = argument;
    throw WrongArgument(std::move(problem));
  }
}

/// A number, or a weight, above 0. Throws WrongArgument.
Rational number_above_zero(std::string_view argument, const std::string& text);
Mass weight_above_zero(std::string_view argument, const std::string& text, const Book& book);

/// A book that several jobs may share.
using OpenedBook = std::shared_ptr<const Book>;

/// The book of these files, read now; null where it has errors.
OpenedBook read_for_jobs(const std::vector<std::string>& files, ProblemList& problems);

/// The book of these files; one that is kept, where books are (`KeptBooks`). Throws
/// BookHasProblems.
OpenedBook open_book(const std::vector<std::string>& files, ProblemList& problems);

/// The book of these files, and one for each of its events. Throws BookHasProblems.
EventBooks open_events(const std::vector<std::string>& files, ProblemList& problems);

/// The book of these files, or the built-in tables alone where there are none. Throws
/// BookHasProblems.
OpenedBook tables_or_book(const std::vector<std::string>& files, ProblemList& problems);

/// The event of the file. Throws Failure where it holds none.
const Event& the_event(const Book& book, const std::string& file);

/// The recipe meant: the one named, or the only one of the files named. Throws Failure, or
/// WrongArgument for a name that is not there.
const Recipe& the_recipe(const Book& book, const std::string& name, const std::string& file);

/// The plan for what the options ask, among these recipes (the book's, or what they are changed
/// to); the tested batch if they ask nothing. Throws Failure, or WrongArgument for what can't be
/// read.
ScalePlan plan_from(const ScaleOptions& options, const Recipe& recipe, const Book& book,
                    const RecipeBook& recipes);

/// In whose measures the sheet is written.
MeasuringSystem system_for(const CommonOptions& common, MeasuringSystem of_book);

/// The book's kitchen in that system, with the tolerance and the rounding that the options ask for.
/// Throws WrongArgument for what can't be read.
Kitchen kitchen_wanted(const CommonOptions& common, const Book& book, MeasuringSystem system);

}  // namespace platewright::cli
