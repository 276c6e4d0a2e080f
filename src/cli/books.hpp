#pragma once
// Books and sizes for the commands.

#include <optional>
#include <string>
#include <vector>

#include "cli/arguments.hpp"
#include "platewright/book/read_book.hpp"
#include "platewright/recipe/scale_plan.hpp"

namespace platewright::cli {

/// Thrown where the book has errors; they are in the problem list already.
struct BookHasProblems {};

/// The book of these files. Throws BookHasProblems.
Book open_book(const std::vector<std::string>& files, ProblemList& problems);

/// The event of the file. Throws Failure where it holds none.
const Event& the_event(const Book& book, const std::string& file);

/// The recipe meant: the one named, or the only one of the files named. Throws Failure.
const Recipe& the_recipe(const Book& book, const std::string& name, const std::string& file);

/// The plan for what the options ask; the tested batch if they ask nothing. Throws Failure.
ScalePlan plan_from(const ScaleOptions& options, const Recipe& recipe, const Book& book);

/// In whose measures the sheet is written.
MeasuringSystem system_for(const CommonOptions& common, MeasuringSystem of_book);

}  // namespace platewright::cli
