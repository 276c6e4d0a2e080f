// SPDX-License-Identifier: MIT
#pragma once
// Reading a book.

#include <optional>
#include <string>
#include <vector>

#include "platewright/book/book.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// Reads the files and all files that they name under `with`, found beside the file that names
/// them; checks everything and links names to what they mean. Every problem of every file goes into
/// `problems`, warnings included. Where a file is missing or can't be read, what its names are
/// needed for is not checked, since that would only repeat the one problem. Returns nothing where
/// there is an error: a book is whole or it is not there.
std::optional<Book> read_book(const std::vector<std::string>& names, ProblemList& problems);

/// Several events that were read in one run.
struct EventBooks {
  Book together;  ///< of all files
  /// A book for each event, as if its file had been read with what it names under `with` and those
  /// files of the run that hold no event: what the other events name changes nothing of it.
  std::vector<Book> apart;
};

/// Reads as `read_book` does, and each event by itself. Problems are those of `read_book` and of
/// each by itself. Returns nothing where there is an error.
std::optional<EventBooks> read_events_apart(const std::vector<std::string>& names,
                                            ProblemList& problems);

/// All files that reading these opens, as far as they can be read: the files named, those that they
/// name under `with`, and a supplier's list beside the file that says how to read it.
std::vector<std::string> files_read_for(const std::vector<std::string>& names);

}  // namespace platewright
