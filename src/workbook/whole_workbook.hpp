// SPDX-License-Identifier: MIT
#pragma once
// Whether a workbook that was written is there as a whole.

#include <string_view>

#include "platewright/workbook/workbook.hpp"

namespace platewright {

/// Whether `file`, an archive, has each sheet of `workbook` with all its cells, every text that
/// they name, and every part to its end. The library that writes it makes its parts in temporary
/// files and does not look whether they took all: on a full disk it packs what there is, and says
/// nothing.
bool is_whole(std::string_view file, const Workbook& workbook);

}  // namespace platewright
