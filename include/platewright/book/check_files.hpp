#pragma once
// Every problem of files of any kind.

#include <string>
#include <vector>

#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// A file that no book holds and that is read by itself: a worksheet, trials, a supplier's list.
struct SingleFile {
  std::string file;
  std::string kind;  ///< `worksheet`, `trials` or `price list`, as its key says
  bool in_order = false;
};

struct CheckedFiles {
  std::vector<std::string> files;  ///< all that were read, those that others name included
  std::vector<SingleFile> single;
};

/// Reads `files`. Those of a book are read together, as `read_book` does; then each of the others
/// by itself, against what could be read of the book (the built-in tables alone where no file is
/// one of a book). Every problem goes into `problems`.
CheckedFiles check_files(const std::vector<std::string>& files, ProblemList& problems);

}  // namespace platewright
