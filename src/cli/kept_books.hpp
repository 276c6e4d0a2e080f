// SPDX-License-Identifier: MIT
#pragma once
// Books that stay read from one job to the next.

#include <list>
#include <string>
#include <vector>

#include "cli/open_book.hpp"

namespace platewright::cli {

/// While one of these is there, a book of the same files is read once, and its problems are said
/// anew each time. The files count as they were when they were first read. A few books are kept,
/// those that were asked for last.
class KeptBooks {
 public:
  KeptBooks();
  KeptBooks(const KeptBooks&) = delete;
  KeptBooks& operator=(const KeptBooks&) = delete;
  ~KeptBooks();

  /// The one that is there; null where there is none.
  static KeptBooks* here();

  /// Null where the book has errors.
  OpenedBook of(const std::vector<std::string>& files, ProblemList& problems);

 private:
  struct Kept {
    std::vector<std::string> files;
    OpenedBook book;
    ProblemList problems;
  };

  std::list<Kept> kept_;
};

}  // namespace platewright::cli
