// SPDX-License-Identifier: MIT
#pragma once
// What an entry of a timeline is, in words.

#include <string>

#include "platewright/event/timeline.hpp"

namespace platewright {

/// `step`, `oven`: for programs that read a sheet.
std::string kind_text(TimelineKind kind);

/// What is begun.
std::string begin_text(const TimelineEntry& entry);

}  // namespace platewright
