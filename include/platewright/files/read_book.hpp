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

/// All files that reading these opens, as far as they can be read: the files named, those that they
/// name under `with`, and a supplier's list beside the file that says how to read it.
std::vector<std::string> files_read_for(const std::vector<std::string>& names);

}  // namespace platewright
