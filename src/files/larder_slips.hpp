// SPDX-License-Identifier: MIT
#pragma once
// Keys of an ingredient that stand where ingredients do.

#include <cstddef>
#include <set>

#include "files/reading.hpp"

namespace platewright::reading {

/// Reports each ingredient of a larder that has nothing below it because its keys stand as far left
/// as its name. Returns the places of these entries, of the ingredient and of its keys.
std::set<std::size_t> report_keys_too_far_left(const yaml::Node& larder, const Reading& reading);

}  // namespace platewright::reading
