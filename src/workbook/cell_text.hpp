// SPDX-License-Identifier: MIT
#pragma once
// Text as a cell of a workbook may hold it.

#include <string>
#include <string_view>

namespace platewright {

/// The text with U+FFFD for bytes that are not UTF-8 and for a zero byte. Throws Failure for more
/// than 32767 signs.
std::string cell_text(std::string_view text);

}  // namespace platewright
