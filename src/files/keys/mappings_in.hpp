// SPDX-License-Identifier: MIT
#pragma once
// Every kind of map that a file has.

#include <vector>

#include "files/keys/keys.hpp"

namespace platewright::reading {

/// The file's own first, then what stands behind its keys, each once.
std::vector<const Mapping*> mappings_in(FileKind kind);

}  // namespace platewright::reading
