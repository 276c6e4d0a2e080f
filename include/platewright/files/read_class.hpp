// SPDX-License-Identifier: MIT
#pragma once
// Reading the worksheets of a class, a file a student.

#include <string>
#include <vector>

#include "platewright/book/book.hpp"
#include "platewright/problem/problem_list.hpp"
#include "platewright/worksheet/class_marks.hpp"

namespace platewright {

/// The files that these names mean, each once: a folder means the YAML files right in it, in the
/// order of their names, without hidden ones. A folder without any is a problem, as is a number of
/// files past the bound.
std::vector<std::string> worksheet_files(const std::vector<std::string>& names,
                                         ProblemList& problems);

/// Whether the names are those of a class, and not of one worksheet.
bool name_a_class(const std::vector<std::string>& names);

/// Reads and marks each worksheet; a student has the name of the file without its ending, or its
/// whole path where two are alike. What is wrong with one stops none of the others; every problem
/// goes into `problems`, and a file without answers is a warning.
std::vector<StudentSheet> read_class(const std::vector<std::string>& names, const Book& book,
                                     ProblemList& problems);

}  // namespace platewright
