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
/// `problems`, warnings included. Returns nothing where there is an error: a book is whole or it is
/// not there.
std::optional<Book> read_book(const std::vector<std::string>& files, ProblemList& problems);

}  // namespace platewright
