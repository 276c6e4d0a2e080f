// SPDX-License-Identifier: MIT
#pragma once
// Every problem of files of any kind.

#include <string>
#include <vector>

#include "platewright/book/checked_files.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// Reads `files`. Those of a book are read together, as `read_book` does; then each of the others
/// by itself, against what could be read of the book (the built-in tables alone where no file is
/// one of a book). Every problem goes into `problems`.
CheckedFiles check_files(const std::vector<std::string>& files, ProblemList& problems);

}  // namespace platewright
