// SPDX-License-Identifier: MIT
#pragma once
// An exercise as the file that a student fills in.

#include <string>

#include "platewright/worksheet/exercise.hpp"

namespace platewright {

/// A worksheet's file with the figures that are given and a `____` for each answer, ready to be
/// read by `read_worksheet`: an answer that is still `____` is not marked.
std::string exercise_file(const Exercise& exercise, const YieldTable& table);

}  // namespace platewright
