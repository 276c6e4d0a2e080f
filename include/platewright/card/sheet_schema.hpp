// SPDX-License-Identifier: MIT
#pragma once
// What a program needs to know of a sheet that is written as JSON.

#include <string>

namespace platewright {

/// The JSON Schema (draft 2020-12) of what `write_json` writes, of every kind of sheet: its frame,
/// its kinds, and what a value may be. Which arrays a sheet has, and which keys, depends on what is
/// shown; each row of an array has the same keys. Its version is `json_version`.
std::string sheet_schema();

}  // namespace platewright
