// SPDX-License-Identifier: MIT
#pragma once
// What an editor needs to know of a book's files.

#include <string>

#include "platewright/book/file_kind.hpp"

namespace platewright {

/// The JSON Schema (draft 2020-12) of a kind of file, made from the tables of keys by which files
/// are read. It accepts every file that the reader accepts; what stands behind a key, it mostly
/// leaves to the reader.
std::string file_schema(FileKind kind);

}  // namespace platewright
