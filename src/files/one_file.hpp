// SPDX-License-Identifier: MIT
#pragma once
// A file that is read by itself: a worksheet, or trials.

#include <optional>
#include <string>

#include "files/reading.hpp"

namespace platewright::reading {

/// Loads the file, which has to have the key `kind`; its own `measures` win over those of the book.
/// Problems go into `problems`, and nothing is returned then.
std::optional<BookFile> read_one_file(const std::string& file, FileKind kind, const Book& book,
                                      ProblemList& problems);

}  // namespace platewright::reading
