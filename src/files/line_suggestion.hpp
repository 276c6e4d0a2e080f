// SPDX-License-Identifier: MIT
#pragma once
// An ingredient's line that is no `name: amount`, as it was most likely meant.

#include <string>
#include <string_view>

#include "files/reading.hpp"

namespace platewright::reading {

/// `- salt: 1 tbsp` for `salt:1 tbsp`, `salt 1 tbsp`, `salt, 1 tbsp`, `salt = 1 tbsp` and `1 tbsp
/// salt`; where no amount can be told from the name, a line with an amount to be filled in.
std::string suggested_line(std::string_view text, const Reading& reading);

/// What to write for the items of a map where a list is wanted: a dash before each, with the first
/// entry as the example.
std::string with_dashes(const yaml::Node& map);

}  // namespace platewright::reading
