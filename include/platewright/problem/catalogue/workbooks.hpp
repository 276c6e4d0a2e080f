// SPDX-License-Identifier: MIT
#pragma once
// What keeps a workbook from being written.

#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem workbook_not_built();

Problem workbook_not_written(std::string_view reason);

Problem workbook_text_too_long(std::string_view text, std::size_t most);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/workbooks.hpp"
#endif
