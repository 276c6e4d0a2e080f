// SPDX-License-Identifier: MIT
#pragma once
// A table on a page of text.

#include "card/text_page.hpp"

namespace platewright::detail {

/// Prints the table in columns, narrowed to the page; where even that is too wide, one value a
/// line.
void print_table(TextPage& page, const Table& whole);

}  // namespace platewright::detail
